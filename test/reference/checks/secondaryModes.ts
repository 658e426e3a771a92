import { solveElectricField } from "../../../src/calc/coil/electricField";
import { coilMesh } from "../../../src/calc/coil/mesh";
import { modeCurrent, type SecondaryMode, secondaryModes } from "../../../src/calc/coil/secondaryModes";
import { topLoadFields } from "../../../src/calc/coil/topLoadField";
import { sectionInductanceMatrix } from "../../../src/calc/field/windingInductance";
import type { ReferenceCheck } from "../check";
import coupling from "../mode-coupling.json";
import modes from "../secondary-modes.json";
import { COILS, type CoilName, inputsOf, referenceCoil } from "./referenceCoils";

const SECTIONS = 100;
const FUNCTIONS = 16;
const PLANE = { ceilingHeight: null };

function solved(coil: CoilName, parts: { topLoad: boolean; primary: boolean }) {
  const { secondary } = inputsOf(coil);
  const field = solveElectricField(coilMesh(referenceCoil(coil, parts)), PLANE, FUNCTIONS);
  if (!field) throw new Error("the elimination failed");
  const inductance = sectionInductanceMatrix(
    { turns: secondary.N, pitch: secondary.pitch, radius: secondary.R, conductorRadius: secondary.wire / 2 },
    SECTIONS,
  );
  const found = secondaryModes(field.loaded?.elastance ?? field.bare, field.functions, inductance, SECTIONS);
  return { field, found };
}

const current = (mode: SecondaryMode, part: number): number => modeCurrent(mode, FUNCTIONS, part);

const CASES = {
  with_toroid_with_primary: { topLoad: true, primary: true },
  with_toroid_no_primary: { topLoad: true, primary: false },
  no_toroid_with_primary: { topLoad: false, primary: true },
  no_toroid_no_primary: { topLoad: false, primary: false },
};

const SOURCE = "Ritz solve and an independent sectioned solve, agreeing to 1e-6";

function checksOf(coil: CoilName, name: keyof typeof CASES): ReferenceCheck[] {
  const reference = modes.coils[coil][name];
  const spoken = name.replaceAll("_", " ");
  const found = () => solved(coil, CASES[name]).found;
  const check = (
    quantity: string,
    value: number,
    unit: string,
    tolerance: number,
    compute: () => number,
  ): ReferenceCheck => ({
    id: `modes-${coil}-${name}-${quantity}`,
    group: "Modes of the secondary",
    name: `Coil ${coil}, ${spoken}: ${quantity}`,
    source: SOURCE,
    reference: value,
    unit,
    tolerance,
    compute,
  });
  const { profile } = reference;
  const worst =
    (values: readonly number[], at: (mode: SecondaryMode, part: number) => number) => (): number => {
      const [mode] = found();
      return Math.max(
        ...profile.z_over_length.map((part, index) => Math.abs(at(mode, part) - values[index])),
      );
    };
  const absolute = (each: ReferenceCheck): ReferenceCheck => ({ ...each, absolute: true });
  return [
    check("fundamental", reference.f1_ref, "Hz", 1e-3, () => found()[0].resonance),
    check("first overtone", reference.f2_ref, "Hz", 3e-3, () => found()[1].resonance),
    check(
      "effective capacitance",
      reference.modal_capacitance_at_top,
      "F",
      3e-3,
      () => found()[0].effectiveCapacitance,
    ),
    check(
      "base current per top volt over ω",
      reference.base_current_per_top_volt_over_omega,
      "F",
      3e-3,
      () => {
        const [mode] = found();
        return current(mode, 0) / (2 * Math.PI * mode.resonance);
      },
    ),
    absolute(
      check(
        "voltage profile, largest deviation",
        0,
        "",
        0.01,
        worst(profile.V_over_Vtop, (mode, part) => mode.voltage[Math.round(part * SECTIONS)]),
      ),
    ),
    absolute(
      check(
        "current profile, largest deviation",
        0,
        "",
        0.01,
        worst(profile.I_over_Ibase, (mode, part) => current(mode, part) / current(mode, 0)),
      ),
    ),
  ];
}

function inModeChecks(coil: CoilName): ReferenceCheck[] {
  const reference = coupling.coils[coil];
  const both = { topLoad: true, primary: true };
  const source = "Ritz solve with 24 charge functions";
  const group = "Modes of the secondary";
  return [
    {
      id: `modes-${coil}-third`,
      group,
      name: `Coil ${coil}: third mode`,
      source,
      reference: reference.f3,
      unit: "Hz",
      tolerance: 5e-3,
      compute: () => solved(coil, both).found[2].resonance,
    },
    {
      id: `modes-${coil}-effective-inductance`,
      group,
      name: `Coil ${coil}: effective inductance`,
      source,
      reference: reference.L_eff,
      unit: "H",
      tolerance: 3e-3,
      compute: () => {
        const [mode] = solved(coil, both).found;
        return 1 / ((2 * Math.PI * mode.resonance) ** 2 * mode.effectiveCapacitance);
      },
    },
    {
      id: `modes-${coil}-surface-field`,
      group,
      name: `Coil ${coil}: largest surface field in the fundamental`,
      source,
      reference: reference.E_max_per_volt_mode[0],
      unit: "1/m",
      tolerance: 1e-2,
      compute: () => {
        const { field, found } = solved(coil, both);
        return topLoadFields(field, found[0])[0].largest;
      },
    },
  ];
}

export const MODE_CHECKS: readonly ReferenceCheck[] = COILS.flatMap((coil) => [
  ...(Object.keys(CASES) as (keyof typeof CASES)[]).flatMap((name) => checksOf(coil, name)),
  ...inModeChecks(coil),
]);
