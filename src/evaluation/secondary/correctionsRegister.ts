import type { ResultEntry } from "../register/entry";
import { cite } from "../register/source";

const COMMON = {
  dimension: "percent",
  symbol: "Δf/f",
  validity: "For the secondary's resonance with its top load, no spark, the other corrections as set.",
} as const;

const RAYLEIGH = {
  formula: "√(IᵀLI without / IᵀLI with) − 1",
  source: [cite("rayleighSound", "art. 88", "quotient with the mode held")],
  accuracy: "Of second order in the change: a shift of 1 % is known to about 1e-4.",
} as const;

export const CORRECTION_RESULTS: readonly ResultEntry[] = [
  {
    ...COMMON,
    id: "corrections.formerShift",
    label: "Shift by the former",
    words: "How the dielectric of the former changes the secondary's resonance when it is included.",
    formula: "√(C/(C + ΔC)) − 1",
    inputs: ["secondary.formerPermittivity", "secondary.formerWall", "secondary.effectiveCapacitance"],
    source: [cite("jackson", "sec. 4.7", "field energy in the former's wall, to first order")],
    accuracy: "30 % of the shift.",
  },
  {
    ...COMMON,
    ...RAYLEIGH,
    id: "corrections.floorShift",
    label: "Shift by a conducting floor",
    words: "How a floor that conducts and mirrors the magnetic flux changes the secondary's resonance.",
    inputs: ["secondary.baseHeight", "secondary.profile", "secondary.inductance"],
  },
  {
    ...COMMON,
    ...RAYLEIGH,
    id: "corrections.wireCurrentShift",
    label: "Shift by the current's position in the wire",
    words:
      "How eddy currents in the wire change the secondary's resonance: less inductance inside the wire, and flux that it pushes out of the winding.",
    inputs: ["secondary.wire.conductorDiameter", "secondary.profile", "secondary.inductance"],
  },
];
