/**
 * Electrodes with as many nodes as their gaps ask for. The trapezoidal rule's error on a circle of
 * radius a falls as exp(−n·ln(1 + g/a)) for a point at the distance g, on an open sheet of length L as
 * exp(−4n·g/L): near neighbours need more nodes, far ones a few.
 *
 * Source: L. N. Trefethen, J. A. C. Weideman, SIAM Review 56 (2014), 385, theorem 2.1.
 */
import { type Electrode, ringElectrode, sheetElectrode, sphereElectrode } from "../field/electrode";
import { type CoilConductors, type Cylinder, cylinderGap, type RoundConductor, roundGap } from "./conductors";

export interface CoilMesh {
  winding: Electrode;
  topLoad: Electrode[];
  /** primary turns, rail and wall: all at ground potential */
  grounded: Electrode[];
}

/** Natural logarithm of the relative error that the nodes keep below: about 3·10⁻⁴ of a near field's part. */
const ACCURACY = 8;
const FEWEST = { ring: 8, topLoad: 24, sheet: 32 };
const MOST = 128;

function evenBetween(count: number, fewest: number): number {
  return 2 * Math.ceil(Math.min(Math.max(count, fewest), MOST) / 2);
}

function ringNodes(sectionRadius: number, gap: number, fewest: number, refinement: number): number {
  return evenBetween((refinement * ACCURACY) / Math.log1p(gap / sectionRadius), fewest * refinement);
}

function sheetNodes(length: number, gap: number, refinement: number): number {
  return evenBetween((refinement * ACCURACY * length) / (4 * gap), FEWEST.sheet * refinement);
}

/** Smallest clear distance of a round conductor from everything else, its own images included. */
function nearestGap(round: RoundConductor, rounds: readonly RoundConductor[], coil: CoilConductors): number {
  const toGround = 2 * (round.centreHeight - round.sectionRadius);
  const toCeiling =
    coil.ceilingHeight === null
      ? Number.POSITIVE_INFINITY
      : 2 * (coil.ceilingHeight - round.centreHeight - round.sectionRadius);
  const others = rounds.filter((other) => other !== round).map((other) => roundGap(round, other));
  const cylinders = [coil.winding, ...(coil.wall ? [coil.wall] : [])].map((cylinder) =>
    cylinderGap(round, cylinder),
  );
  return Math.min(toGround, toCeiling, ...others, ...cylinders);
}

function roundElectrode(round: RoundConductor, count: number): Electrode {
  if (round.kind === "sphere") return sphereElectrode(round.sectionRadius, round.centreHeight, count);
  return ringElectrode(round.centreRadius, round.sectionRadius, round.centreHeight, count);
}

function sheetMesh(sheet: Cylinder, rounds: readonly RoundConductor[], refinement: number): Electrode {
  const gap = Math.min(2 * sheet.lowerEnd, ...rounds.map((round) => cylinderGap(round, sheet)));
  return sheetElectrode(
    sheet.radius,
    sheet.lowerEnd,
    sheet.length,
    sheetNodes(sheet.length, gap, refinement),
  );
}

/**
 * Electrodes of a coil whose conductors do not cross.
 * @param refinement factor on every number of nodes, 1 for the accuracy of 10⁻⁴ in the resonance
 */
export function coilMesh(coil: CoilConductors, refinement = 1): CoilMesh {
  const ground = [...coil.primary, ...(coil.rail ? [coil.rail] : [])];
  const rounds = [...coil.topLoad, ...ground];
  const mesh = (round: RoundConductor, fewest: number): Electrode =>
    roundElectrode(
      round,
      ringNodes(round.sectionRadius, nearestGap(round, rounds, coil), fewest, refinement),
    );
  const wall = coil.wall ? [sheetMesh(coil.wall, rounds, refinement)] : [];
  return {
    winding: sheetMesh(coil.winding, rounds, refinement),
    topLoad: coil.topLoad.map((round) => mesh(round, FEWEST.topLoad)),
    grounded: [...ground.map((round) => mesh(round, FEWEST.ring)), ...wall],
  };
}
