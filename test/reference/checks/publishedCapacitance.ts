/** Published capacitances of a disc, a cylinder and single-layer coils. */
import { solveElectricField } from "../../../src/calc/coil/electricField";
import { coilMesh } from "../../../src/calc/coil/mesh";
import { secondaryModes } from "../../../src/calc/coil/secondaryModes";
import { ELECTRIC_CONSTANT } from "../../../src/calc/constants";
import { type Electrode, sheetElectrode, sphereElectrode } from "../../../src/calc/field/electrode";
import { influenceMatrix, totalNodes } from "../../../src/calc/field/influenceMatrix";
import { openLogarithmWeights } from "../../../src/calc/field/logarithmWeights";
import { sectionInductanceMatrix } from "../../../src/calc/field/windingInductance";
import { factorise, substitute } from "../../../src/calc/linear/elimination";
import type { ReferenceCheck } from "../check";
import { publishedValue } from "./publishedValue";

const GROUP = "Published values";
const NODES = 32;
const SECTIONS = 100;

/** A flat disc from its centre to its rim: r = ½·radius·(1 − cos t). */
function discElectrode(radius: number, height: number): Electrode {
  const step = Math.PI / NODES;
  const nodes = (value: (t: number) => number) =>
    Float64Array.from({ length: NODES }, (_, i) => value((i + 0.5) * step));
  return {
    closed: false,
    radius: nodes((t) => 0.5 * radius * (1 - Math.cos(t))),
    height: nodes(() => height),
    speed: nodes(() => 0.5 * radius),
    share: nodes((t) => 0.5 * radius * Math.sin(t) * step),
    logarithm: openLogarithmWeights(NODES),
    step,
  };
}

function capacitance(electrodes: readonly Electrode[]): number {
  const size = totalNodes(electrodes);
  const matrix = influenceMatrix(electrodes, null);
  factorise(matrix, size);
  const charges = new Float64Array(size).fill(1);
  substitute(matrix, size, size, charges, 1);
  return charges.reduce((sum, charge) => sum + charge, 0);
}

const disc: ReferenceCheck = {
  id: "published-disc",
  group: GROUP,
  name: "Isolated disc of 0.1 m radius, 8ε₀a",
  source:
    "Smythe, Static and Dynamic Electricity (1950), sec. 5.03 (section not verified); from memory, recomputed",
  reference: 7.0833503e-12,
  unit: "F",
  tolerance: 1e-6,
  compute: () => capacitance([discElectrode(0.1, 0)]),
};

const sphere: ReferenceCheck = {
  id: "published-sphere",
  group: GROUP,
  name: "Isolated sphere of 0.1 m radius, 4πε₀a",
  source: "any text on electrostatics, such as Smythe, Static and Dynamic Electricity (1950)",
  reference: 11.12650056e-12,
  unit: "F",
  tolerance: 1e-6,
  compute: () => capacitance([sphereElectrode(0.1, 1, NODES)]),
};

/** The second of the published figures: the first is a fit of 0.2 % (0.3 % in fact) to the same quantity. */
const cylinders: ReferenceCheck[] = Object.entries(publishedValue("C-cylinder")).map(([ratio, value]) => ({
  id: `published-cylinder-${ratio}`,
  group: GROUP,
  name: `Isolated solid cylinder, half length over radius ${ratio}, in ε₀a`,
  source: "boundary elements beside Smythe's fit, J. Appl. Phys. 33 (1962), 2966 (recomputed, not the fit)",
  reference: (value as number[])[1],
  unit: "",
  tolerance: 1e-4,
  compute: () => {
    const length = 2 * Number(ratio);
    const surfaces = [sheetElectrode(1, 1, length, NODES), discElectrode(1, 1), discElectrode(1, 1 + length)];
    return capacitance(surfaces) / ELECTRIC_CONSTANT;
  },
}));

/**
 * Effective capacitance of a bare coil, its lower end earthed half a diameter above a ground plane: what
 * makes its fundamental with its low-frequency inductance. The source does not state the height; between
 * a fifth of the diameter and one half the result changes by 2 to 3 %.
 * @returns C/D in pF/cm, as published
 */
function effectiveCapacitanceOverDiameter(slenderness: number): number {
  const [diameter, turns] = [0.1, 1000];
  const length = slenderness * diameter;
  const winding = { path: "secondary", radius: diameter / 2, lowerEnd: diameter / 2, length };
  const none = { topLoad: [], primary: [], primaryEnds: [], rail: null, wall: null, ceilingHeight: null };
  const field = solveElectricField(coilMesh({ winding, ...none }), { ceilingHeight: null });
  if (!field) throw new Error("the elimination failed");
  const pitch = length / turns;
  const inductance = sectionInductanceMatrix(
    { turns, pitch, radius: diameter / 2, conductorRadius: 0.4 * pitch },
    SECTIONS,
  );
  const [{ resonance }] = secondaryModes(field.bare, field.functions, inductance, SECTIONS);
  const lowFrequency = inductance.reduce((sum, value) => sum + value, 0);
  const capacitance = 1 / ((2 * Math.PI * resonance) ** 2 * lowFrequency);
  return (capacitance * 1e12) / (diameter * 100);
}

/**
 * The author states about 5 %. The table is met from 1.5 to 3 diameters of length, the fit from 1.5 to 5
 * (fit and table lie 5–8 % apart between 2.5 and 6). Longer coils come out ever lower than either (at 10
 * diameters 20 % below the table): the surroundings of the measured coils are not known, and a plane under
 * the earthed end is not theirs. Those are not checked.
 */
function coilCheck(kind: "table" | "fit", slenderness: number, reference: number): ReferenceCheck {
  return {
    id: `published-coil-${kind}-${slenderness}`,
    group: GROUP,
    name: `Self-capacitance of a coil, length over diameter ${slenderness}, ${kind}, pF per cm of diameter`,
    source: `Medhurst, Wireless Engineer 24 (1947), 35 and 80: ${kind === "table" ? "its table" : "a later fit"}; read in transcription`,
    reference,
    unit: "",
    tolerance: 0.05,
    compute: () => effectiveCapacitanceOverDiameter(slenderness),
  };
}

const TABLE = publishedValue("C-medhurst-H") as Record<string, number>;
const FIT = publishedValue("C-medhurst-fit") as Record<string, number[]>;

export const PUBLISHED_CAPACITANCE_CHECKS: readonly ReferenceCheck[] = [
  disc,
  sphere,
  ...cylinders,
  ...[1.5, 2, 2.5, 3].map((slenderness) => coilCheck("table", slenderness, TABLE[slenderness])),
  ...[1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5].map((slenderness) =>
    coilCheck("fit", slenderness, FIT[slenderness][1]),
  ),
];
