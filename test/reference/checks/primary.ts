import { couplingCoefficient } from "../../../src/calc/coil/coupling";
import {
  type PrimarySolution,
  type PrimaryTube,
  primaryAtTap,
  solvePrimary,
} from "../../../src/calc/coil/primary";
import { mutualAtTap, sectionMutuals } from "../../../src/calc/coil/sectionMutuals";
import { UNIFORM_INTERNAL_INDUCTANCE } from "../../../src/calc/coil/skinEffect";
import { ringMutualInductance, ringSelfInductance } from "../../../src/calc/field/loops";
import { spiralInductance } from "../../../src/calc/field/spiralInductance";
import { sectionInductanceMatrix } from "../../../src/calc/field/windingInductance";
import type { ReferenceCheck } from "../check";
import reference from "../primary.json";
import unused from "../primary-unused-turns.json";
import solenoids from "../solenoids.json";

interface Shape {
  r0: number;
  pitch: number;
  tube: number;
  angle_deg: number;
  turns: number;
}

function tubeOf(shape: Shape, baseHeight = 1): PrimaryTube {
  return {
    innerRadius: shape.r0,
    pitch: shape.pitch,
    tubeDiameter: shape.tube,
    inclinationDegrees: shape.angle_deg,
    turns: shape.turns,
    baseHeight,
    wallThickness: shape.tube / 2,
  };
}

function solved(tube: PrimaryTube): PrimarySolution {
  const solution = solvePrimary(tube);
  if (solution === null) throw new Error("the reference primary has no solution");
  return solution;
}

/** Ring formulas over the turns' middle circles; a begun turn is a circle of its fraction as weight. */
function circleSum({ rings, tube }: PrimarySolution, currentDistribution: number): number {
  const weight = Array.from(rings.radius, (_, i) => Math.min(1, tube.turns - i));
  let sum = 0;
  rings.radius.forEach((a, i) => {
    const middle = i + (weight[i]! === 1 ? 0.5 : weight[i]! / 2) - i - 0.5;
    const slope = (tube.inclinationDegrees * Math.PI) / 180;
    const radius = a + middle * tube.pitch * Math.cos(slope);
    const height = rings.height[i]! + middle * tube.pitch * Math.sin(slope);
    sum += weight[i]! ** 2 * ringSelfInductance(radius, rings.conductorRadius, currentDistribution);
    for (let j = 0; j < i; j++) {
      sum += 2 * weight[i]! * ringMutualInductance(radius, rings.radius[j]!, height - rings.height[j]!);
    }
  });
  return sum;
}

const CIRCLES = "primary.json: circle sums by the exact loop formula, SciPy";
const SPIRAL = "primary.json: true 3-D spiral by a Neumann double sum, SciPy";
const CROWDED = "primary.json: Nyström solve of the flux-function integral equation";

const shapes: ReferenceCheck[] = reference.primaries.flatMap((shape) => {
  const label = `${shape.shape}, ${shape.turns} turns`;
  const common = { group: "Primary", unit: "H" };
  return [
    {
      ...common,
      id: `primary.circles.surface.${label}`,
      name: `${label}: circles, surface current`,
      source: CIRCLES,
      reference: shape.L_circ_surface,
      tolerance: 1e-8,
      compute: () => circleSum(solved(tubeOf(shape)), 0),
    },
    {
      ...common,
      id: `primary.circles.uniform.${label}`,
      name: `${label}: circles, uniform current`,
      source: CIRCLES,
      reference: shape.L_circ_uniform,
      tolerance: 1e-8,
      compute: () => circleSum(solved(tubeOf(shape)), 0.25),
    },
    {
      ...common,
      id: `primary.spiral.surface.${label}`,
      name: `${label}: spiral, surface current`,
      source: SPIRAL,
      reference: shape.L_spiral_surface,
      tolerance: 3e-4,
      compute: () => spiralInductance(solved(tubeOf(shape)).spiral, shape.turns),
    },
    {
      ...common,
      id: `primary.spiral.uniform.${label}`,
      name: `${label}: spiral, uniform current (a meter at low frequency, solid conductor)`,
      source: SPIRAL,
      reference: shape.L_spiral_uniform,
      tolerance: 3e-4,
      compute: () => primaryAtTap(solved(tubeOf(shape)), shape.turns)!.lowFrequencyInductance,
    },
  ];
});

const crowded: ReferenceCheck[] = reference.perfect_conductor.map((one) => ({
  id: `primary.crowded.${one.shape}.${one.turns}`,
  group: "Primary",
  name: `${one.shape}, ${one.turns} turns: perfect conductor`,
  source: CROWDED,
  reference: one.L_hf_perfect_conductor,
  unit: "H",
  tolerance: 1e-3,
  compute: () => {
    const shape = reference.primaries.find((other) => other.shape === one.shape)!;
    const solution = solved(tubeOf({ ...shape, turns: one.turns }));
    return solution.inductanceRatio[one.turns]! * circleSum(solution, 0);
  },
}));

const SECTIONS = 50;

/** Of sections that carry the same current. */
const sum = (values: Float64Array): number => values.reduce((whole, value) => whole + value, 0);

/** k with crowding is that of circles; the project's primary is a spiral, so the reference's own spiral/circle step is put in. */
const couplings: ReferenceCheck[] = reference.coupling.flatMap((one) => {
  const coil = solenoids.round_wire.find((other) => other.name === one.secondary)!.inputs;
  const secondary = {
    turns: coil.N,
    pitch: coil.pitch,
    radius: coil.R,
    conductorRadius: coil.wire_bare_dia / 2,
    baseHeight: 1,
  };
  const label = `coil ${one.secondary}, ${one.kind} from ${one.start_z_minus_winding_base} m`;
  const table = () =>
    sectionMutuals(solved(tubeOf(one, 1 + one.start_z_minus_winding_base)), secondary, SECTIONS);
  return [
    {
      id: `primary.mutual.${label}`,
      group: "Coupling",
      name: `M of the true spiral, ${label}`,
      source: SPIRAL,
      reference: one.M_spiral,
      unit: "H",
      tolerance: 1e-5,
      compute: () =>
        table()
          .spiral.slice(-SECTIONS)
          .reduce((sum, part) => sum + part),
    },
    {
      id: `primary.k.${label}`,
      group: "Coupling",
      name: `k with crowded tubes, ${label}`,
      source: `${CROWDED}, times spiral over circles of the same file`,
      reference: (one.hf.k * one.k_spiral) / one.k,
      unit: "",
      tolerance: 1e-3,
      compute: () => {
        const sections = table();
        const { inductance } = primaryAtTap(sections.solution, one.turns)!;
        const mutuals = mutualAtTap(sections, one.turns)!;
        return couplingCoefficient(
          sum(mutuals),
          inductance,
          sum(sectionInductanceMatrix(secondary, SECTIONS)),
        );
      },
    },
  ];
});

const EXAMPLE: PrimaryTube = {
  innerRadius: 0.105,
  turns: 8,
  pitch: 0.0145,
  inclinationDegrees: 0,
  tubeDiameter: 0.0095,
  wallThickness: 0.0008,
  baseHeight: 0.1,
};

const EXAMPLE_SECONDARY = {
  turns: 1480,
  pitch: 0.56 / 1480,
  radius: 0.0625 + 0.000371 / 2,
  conductorRadius: 0.000335 / 2,
  baseHeight: 0.11,
};

const UNUSED = "primary-unused-turns.json: flux-function integral equation, unused turns without net current";

const unusedTurns: ReferenceCheck[] = Object.entries(unused.inductance_H).map(([tap, value]) => ({
  id: `primary.unused.${tap}`,
  group: "Primary",
  name: `example's primary tapped at ${tap} of 8 turns`,
  source: UNUSED,
  reference: value,
  unit: "H",
  tolerance: 3e-3,
  compute: () => primaryAtTap(solved(EXAMPLE), Number(tap))!.inductance,
}));

const example: ReferenceCheck[] = [
  {
    id: "primary.example.k",
    group: "Coupling",
    name: "example, k for uniform current at tap 6",
    source: UNUSED,
    reference: unused.other_values_of_the_example.k_uniform_at_tap_6,
    unit: "",
    tolerance: 5e-3,
    compute: () => {
      const table = sectionMutuals(solved(EXAMPLE), EXAMPLE_SECONDARY, SECTIONS);
      const { inductance } = primaryAtTap(table.solution, 6)!;
      const matrix = sectionInductanceMatrix(EXAMPLE_SECONDARY, SECTIONS);
      return couplingCoefficient(sum(mutualAtTap(table, 6)!), inductance, sum(matrix));
    },
  },
  {
    id: "primary.example.secondary",
    group: "Coupling",
    name: "example, inductance of the secondary",
    source: UNUSED,
    reference: unused.other_values_of_the_example["secondary.inductance"],
    unit: "H",
    tolerance: 5e-3,
    compute: () => sectionInductanceMatrix(EXAMPLE_SECONDARY, 1)[0]!,
  },
  {
    id: "primary.internal",
    group: "Primary",
    name: "internal inductance of round wire per metre",
    source: "μ₀/8π, Smythe, Static and Dynamic Electricity",
    reference: 5e-8,
    unit: "H/m",
    tolerance: 1e-9,
    compute: () => UNIFORM_INTERNAL_INDUCTANCE,
  },
];

export const PRIMARY_CHECKS: ReferenceCheck[] = [
  ...shapes,
  ...crowded,
  ...unusedTurns,
  ...couplings,
  ...example,
];
