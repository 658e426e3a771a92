import { coilMesh } from "../../../src/calc/coil/mesh";
import { ELECTRIC_CONSTANT } from "../../../src/calc/constants";
import { surfaceField } from "../../../src/calc/field/electrode";
import type { ReferenceCheck } from "../check";
import electrostatics from "../coil-electrostatics.json";
import { prescribedCharges, totalCharges } from "../prescribedPotential";
import { COILS, type CoilName, referenceCoil } from "./referenceCoils";

type Profile = (part: number) => number;

interface Case {
  winding: Profile;
  top: number;
  topLoad: boolean;
  primary: boolean;
}

const linear: Profile = (part) => part;
const uniform: Profile = () => 1;
const grounded: Profile = () => 0;
const quarterWave: Profile = (part) => Math.sin((Math.PI / 2) * part);

const CASES: Record<string, Case> = {
  linear_plus_toroid: { winding: linear, top: 1, topLoad: true, primary: true },
  uniform_plus_toroid: { winding: uniform, top: 1, topLoad: true, primary: true },
  toroid_only_winding_0V: { winding: grounded, top: 1, topLoad: true, primary: true },
  winding_uniform_toroid_0V: { winding: uniform, top: 0, topLoad: true, primary: true },
  linear_no_toroid: { winding: linear, top: 0, topLoad: false, primary: true },
  uniform_no_toroid: { winding: uniform, top: 0, topLoad: false, primary: true },
  linear_plus_toroid_no_primary: { winding: linear, top: 1, topLoad: true, primary: false },
  uniform_plus_toroid_no_primary: { winding: uniform, top: 1, topLoad: true, primary: false },
  linear_no_toroid_no_primary: { winding: linear, top: 0, topLoad: false, primary: false },
  cosine_profile_plus_toroid: { winding: quarterWave, top: 1, topLoad: true, primary: true },
};

function solved(coil: CoilName, { winding, top, topLoad, primary }: Case) {
  const mesh = coilMesh(referenceCoil(coil, { topLoad, primary }));
  const { charges, potentials } = prescribedCharges(mesh, { ceilingHeight: null }, winding, top);
  return { mesh, charges, potentials, totals: totalCharges(mesh, charges) };
}

function twiceEnergy(coil: CoilName, each: Case): number {
  const { charges, potentials } = solved(coil, each);
  return charges.reduce((sum, charge, node) => sum + charge * potentials[node], 0);
}

function largestField(coil: CoilName, each: Case): number {
  const { mesh, charges } = solved(coil, each);
  const toroid = mesh.topLoad[0];
  const first = charges.length - toroid.radius.length;
  const field = Array.from(toroid.radius, (_, node) =>
    surfaceField(toroid, node, charges[first + node], ELECTRIC_CONSTANT),
  );
  return Math.max(...field);
}

const SOURCE = "spectral boundary elements (1e-8), confirmed by finite elements (2e-4)";

function checksOf(coil: CoilName, name: string, each: Case): ReferenceCheck[] {
  const reference = (
    electrostatics.coils[coil].cases as Record<string, Record<string, number | string | null>>
  )[name];
  const spoken = name.replaceAll("_", " ");
  const check = (
    quantity: string,
    value: number | string | null,
    unit: string,
    tolerance: number,
    compute: () => number,
  ): ReferenceCheck[] =>
    typeof value !== "number" || value === 0
      ? []
      : [
          {
            id: `electrostatics-${coil}-${name}-${quantity}`,
            group: "Charges of whole coils",
            name: `Coil ${coil}, ${spoken}: ${quantity}`,
            source: SOURCE,
            reference: value,
            unit,
            tolerance,
            compute,
          },
        ];
  const totals = () => solved(coil, each).totals;
  return [
    ...check(
      "total charge",
      reference.total_charge_C_per_V,
      "C/V",
      3e-4,
      () => totals().winding + totals().topLoad,
    ),
    ...check("energy", reference.energy_capacitance_2W_over_V2, "F", 3e-4, () => twiceEnergy(coil, each)),
    ...check("toroid charge", reference.toroid_charge, "C/V", 3e-4, () => totals().topLoad),
    ...check("primary charge", reference.primary_charge, "C/V", 3e-4, () => totals().grounded),
    ...check("largest field", reference.E_max_toroid_per_volt, "1/m", 1e-2, () => largestField(coil, each)),
  ];
}

export const ELECTROSTATICS_CHECKS: readonly ReferenceCheck[] = COILS.flatMap((coil) =>
  Object.entries(CASES).flatMap(([name, each]) => checksOf(coil, name, each)),
);
