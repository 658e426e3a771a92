/** The winding's inductance between its sections, at low frequency and as eddy currents in its wire leave it. */
import type { Secondary } from "../design-parts";
import { UNIFORM_CURRENT } from "../field/loops";
import { type RoundWireWinding, sectionInductanceMatrix } from "../field/windingInductance";
import { resistivity, skinDepth } from "./conductor";
import { roundWireSkinEffect } from "./skinEffect";
import { wireDiamagnetism } from "./wireDiamagnetism";

/** Equal sections of the secondary by which current and mutual inductance are resolved. */
export const SECTIONS = 100;

/** The secondary as round turns. */
export function roundWireWinding({
  turns,
  windingLength,
  formerDiameter,
  wire,
}: Pick<Secondary, "turns" | "windingLength" | "formerDiameter" | "wire">): RoundWireWinding {
  return {
    turns,
    pitch: windingLength / turns,
    radius: 0.5 * (formerDiameter + wire.overallDiameter),
    conductorRadius: 0.5 * wire.conductorDiameter,
  };
}

/** Whether the turns can lie side by side: the wire is no thicker than their pitch. */
export function turnsFit({ conductorRadius, pitch }: RoundWireWinding): boolean {
  return 2 * conductorRadius < pitch;
}

export interface SectionInductance {
  winding: RoundWireWinding;
  /** H, SECTIONS² values */
  matrix: Float64Array;
}

/**
 * The winding at low frequency.
 * @param floorHeight m of the winding's base above a conducting floor; undefined without one
 * @param distribution of the current over the wire's section, as the loops take it
 */
export function sectionInductance(
  winding: RoundWireWinding,
  floorHeight: number | undefined,
  distribution = UNIFORM_CURRENT,
): SectionInductance {
  const options = { currentDistribution: distribution, heightAboveConductingFloor: floorHeight };
  return { winding, matrix: sectionInductanceMatrix(winding, SECTIONS, options) };
}

/** The winding as eddy currents in its wire leave it: less internal inductance, and flux pushed out. */
export function sectionInductanceAt(
  winding: RoundWireWinding,
  { wire, windingTemperature }: Pick<Secondary, "wire" | "windingTemperature">,
  floorHeight: number | undefined,
  frequency: number,
): SectionInductance {
  const depth = skinDepth(resistivity(wire.material, windingTemperature), frequency);
  const { internalInductanceRatio } = roundWireSkinEffect((2 * winding.conductorRadius) / depth);
  const moved = sectionInductance(winding, floorHeight, UNIFORM_CURRENT * internalInductanceRatio);
  const kept = 1 - wireDiamagnetism(winding, depth);
  return { winding, matrix: moved.matrix.map((value) => value * kept) };
}

/** H of the whole winding under a uniform current. */
export function wholeInductance({ matrix }: SectionInductance): number {
  return matrix.reduce((sum, value) => sum + value, 0);
}

/** IᵀLI: twice the magnetic energy under a current per section, J. */
function doubleEnergy({ matrix }: SectionInductance, current: readonly number[]): number {
  let sum = 0;
  current.forEach((a, row) => {
    current.forEach((b, column) => {
      sum += a * b * matrix[row * current.length + column];
    });
  });
  return sum;
}

/**
 * Relative change of the resonance from one inductance to another, by Rayleigh's quotient with the
 * current held: its error is of second order in the change.
 * Source: rayleighSound, art. 88.
 * @param current A per section of the mode
 */
export function resonanceShift(
  from: SectionInductance,
  to: SectionInductance,
  current: readonly number[],
): number {
  return Math.sqrt(doubleEnergy(from, current) / doubleEnergy(to, current)) - 1;
}
