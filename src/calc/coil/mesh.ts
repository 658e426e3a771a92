/**
 * Electrodes with as many nodes as their gaps ask for. The trapezoidal rule's error on a circle of
 * radius a falls as exp(−n·ln(1 + g/a)) for a point at the distance g, on an open sheet of length L with
 * z = ½L(1 − cos t) as exp(−4n·g/(L·√(sin²t + g/L))): near neighbours need more nodes, far ones a few, and
 * those at a sheet's ends, where the nodes crowd, fewer than those beside it.
 *
 * Source: L. N. Trefethen, J. A. C. Weideman, SIAM Review 56 (2014), 385, theorem 2.1.
 */
import {
  type Electrode,
  nodeCount,
  ringElectrode,
  sheetElectrode,
  sphereElectrode,
} from "../field/electrode";
import { type CoilConductors, type Cylinder, cylinderGap, type RoundConductor, roundGap } from "./conductors";

export interface CoilMesh {
  winding: Electrode;
  topLoad: Electrode[];
  /** primary turns, rail and wall: all at ground potential */
  grounded: Electrode[];
  /** number of smooth charge functions on the winding */
  chargeFunctions: number;
}

/** Natural logarithm of the relative error that the nodes keep below: about 3·10⁻⁴ of a near field's part. */
const ACCURACY = 8;
const FEWEST = { ring: 8, topLoad: 24, sheet: 32 };
/** So that parts which all but touch cannot hold up an edit. */
const MOST = { ring: 128, sheet: 256 };
/**
 * Between neighbours at one potential there is next to no field and so no charge to be resolved: below
 * this part of the section's radius their gap asks for nothing more. (Ten times finer changes the
 * resonance by less than 10⁻⁶; the field on a top load by 2·10⁻³ at most.)
 */
const SAME_POTENTIAL_GAP = { ring: 1, topLoad: 0.3 };

function evenBetween(count: number, fewest: number, most: number, refinement: number): number {
  return 2 * Math.ceil((refinement * Math.min(Math.max(count, fewest), most)) / 2);
}

function ringNodes(sectionRadius: number, gap: number, fewest: number, refinement: number): number {
  return evenBetween(ACCURACY / Math.log1p(gap / sectionRadius), fewest, MOST.ring, refinement);
}

/**
 * 16 charge functions hold the fundamental to 10⁻⁵, bare and loaded. What stands close by induces charge
 * as narrow as its gap, which has made the nodes many, and asks for more.
 */
const CHARGE_FUNCTIONS = { fewest: 16, most: 48, nodesEach: 5 };

function chargeFunctions(winding: Electrode, refinement: number): number {
  const { fewest, most, nodesEach } = CHARGE_FUNCTIONS;
  const wanted = Math.ceil(nodeCount(winding) / refinement / nodesEach);
  return refinement * Math.min(Math.max(fewest, wanted), most);
}

/** What stands near a sheet: at which part of its length, 0 … 1, and how far off, m. */
interface Neighbour {
  part: number;
  gap: number;
}

function nodesFor(length: number, { part, gap }: Neighbour): number {
  const sineSquared = 4 * part * (1 - part);
  return (ACCURACY * length * Math.sqrt(sineSquared + gap / length)) / (4 * gap);
}

function sheetMesh(sheet: Cylinder, neighbours: readonly Neighbour[], refinement: number): Electrode {
  const { radius, lowerEnd, length } = sheet;
  const count = Math.max(0, ...neighbours.map((neighbour) => nodesFor(length, neighbour)));
  const nodes = evenBetween(count, FEWEST.sheet, MOST.sheet, refinement);
  return sheetElectrode(radius, lowerEnd, length, nodes);
}

function neighbourOf(sheet: Cylinder, round: RoundConductor): Neighbour {
  const part = (round.centreHeight - sheet.lowerEnd) / sheet.length;
  return { part: Math.min(Math.max(part, 0), 1), gap: cylinderGap(round, sheet) };
}

function smallestGap(round: RoundConductor, others: readonly RoundConductor[]): number {
  return Math.min(...others.filter((other) => other !== round).map((other) => roundGap(round, other)));
}

function topLoadNodes(round: RoundConductor, coil: CoilConductors, refinement: number): number {
  const toGround = 2 * (round.centreHeight - round.sectionRadius);
  const toCeiling = 2 * ((coil.ceilingHeight ?? Infinity) - round.centreHeight - round.sectionRadius);
  const toWall = coil.wall ? cylinderGap(round, coil.wall) : Infinity;
  const toGrounded = smallestGap(round, groundedRounds(coil));
  const toOwn = Math.max(smallestGap(round, coil.topLoad), SAME_POTENTIAL_GAP.topLoad * round.sectionRadius);
  const gap = Math.min(toGround, toCeiling, toWall, toGrounded, toOwn, cylinderGap(round, coil.winding));
  return ringNodes(round.sectionRadius, gap, FEWEST.topLoad, refinement);
}

function groundedNodes(round: RoundConductor, coil: CoilConductors, refinement: number): number {
  const toOwn = Math.max(
    smallestGap(round, groundedRounds(coil)),
    SAME_POTENTIAL_GAP.ring * round.sectionRadius,
  );
  const gap = Math.min(toOwn, smallestGap(round, coil.topLoad), cylinderGap(round, coil.winding));
  return ringNodes(round.sectionRadius, gap, FEWEST.ring, refinement);
}

function groundedRounds(coil: CoilConductors): RoundConductor[] {
  return coil.rail ? [...coil.primary, coil.rail] : coil.primary;
}

function roundElectrode(round: RoundConductor, count: number): Electrode {
  if (round.kind === "sphere") return sphereElectrode(round.sectionRadius, round.centreHeight, count);
  return ringElectrode(round.centreRadius, round.sectionRadius, round.centreHeight, count);
}

/** Winding and wall run side by side. */
function besideEachOther(winding: Cylinder, wall: Cylinder): Neighbour {
  return { part: 0.5, gap: wall.radius - winding.radius };
}

function windingMesh(coil: CoilConductors, refinement: number): Electrode {
  const { winding, wall, topLoad } = coil;
  const rounds = [...topLoad, ...groundedRounds(coil)].map((round) => neighbourOf(winding, round));
  const image = { part: 0, gap: 2 * winding.lowerEnd };
  const walls = wall ? [besideEachOther(winding, wall)] : [];
  return sheetMesh(winding, [image, ...rounds, ...walls], refinement);
}

function wallMesh(wall: Cylinder, coil: CoilConductors, refinement: number): Electrode {
  const rounds = coil.topLoad.map((round) => neighbourOf(wall, round));
  return sheetMesh(wall, [besideEachOther(coil.winding, wall), ...rounds], refinement);
}

/**
 * Electrodes of a coil whose conductors do not cross.
 * @param refinement whole factor on every number of nodes and functions, the largest ones too; 1 for the
 * accuracy of 10⁻⁴ in the resonance
 */
export function coilMesh(coil: CoilConductors, refinement = 1): CoilMesh {
  const rounds = groundedRounds(coil).map((round) =>
    roundElectrode(round, groundedNodes(round, coil, refinement)),
  );
  const winding = windingMesh(coil, refinement);
  return {
    winding,
    topLoad: coil.topLoad.map((round) => roundElectrode(round, topLoadNodes(round, coil, refinement))),
    grounded: coil.wall ? [...rounds, wallMesh(coil.wall, coil, refinement)] : rounds,
    chargeFunctions: chargeFunctions(winding, refinement),
  };
}
