/**
 * Electrodes with as many nodes as their gaps ask for. The trapezoidal rule's error on a circle of
 * radius a falls as exp(−n·ln(1 + g/a)) for a point at the distance g, on an open sheet of length L with
 * z = ½L(1 − cos t) as exp(−4n·g/(L·√(sin²t + g/L))): near neighbours need more nodes, far ones a few, and
 * those at a sheet's ends, where the nodes crowd, fewer than those beside it.
 *
 * Source: trefethenWeideman2014, theorem 2.1.
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

/** How closely the nodes follow the charge. */
interface Detail {
  /** natural logarithm of the relative error that the nodes keep below */
  accuracy: number;
  /** whole factor on every number of nodes */
  refinement: number;
}

/** About 3·10⁻⁴ of a near field's part; kept wherever the solve then stays within its bounds. */
const ACCURACY = 8;
const FEWEST = { ring: 8, topLoad: 24, sheet: 32 };
/** With forty turns of tube or eight elements, all close to something, less must do; at worst a per cent of a near field's part. */
const LEAST_ACCURACY = 4;
const ACCURACY_STEP = 0.8;
/** Largest cost of one solve, in inverse mean distances: about ten times that of a usual coil. */
const MOST_WORK = 4e5;
/** Distances of a pair of nodes: itself and its image, and a ceiling's images. */
const DISTANCES = { ground: 2, ceiling: 14 };
/** Steps of the elimination that take as long as a distance. */
const STEPS_PER_DISTANCE = 60;
/** So that parts which all but touch cannot hold up an edit. */
const MOST = { ring: 128, sheet: 256 };
/**
 * Between neighbours at one potential there is next to no field and so no charge to be resolved: below
 * this part of the section's radius their gap asks for nothing more. (Ten times finer changes the
 * resonance by less than 10⁻⁶; the field on a top load by 2·10⁻³ at most.)
 */
const SAME_POTENTIAL_GAP = { ring: 1, topLoad: 0.3 };

function evenBetween(count: number, fewest: number, most: number, detail: Detail): number {
  const share = detail.accuracy / ACCURACY;
  const bounded = Math.min(Math.max(count, fewest * share), most * share);
  return 2 * Math.ceil((detail.refinement * bounded) / 2);
}

function ringNodes(sectionRadius: number, gap: number, fewest: number, detail: Detail): number {
  return evenBetween(detail.accuracy / Math.log1p(gap / sectionRadius), fewest, MOST.ring, detail);
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

/** A conductor near a sheet: its position along the length, 0 … 1, and its distance, m. */
interface Neighbour {
  part: number;
  gap: number;
}

function nodesFor(length: number, { part, gap }: Neighbour, accuracy: number): number {
  const sineSquared = 4 * part * (1 - part);
  return (accuracy * length * Math.sqrt(sineSquared + gap / length)) / (4 * gap);
}

function sheetNodes({ length }: Cylinder, neighbours: readonly Neighbour[], detail: Detail): number {
  const counts = neighbours.map((neighbour) => nodesFor(length, neighbour, detail.accuracy));
  return evenBetween(Math.max(0, ...counts), FEWEST.sheet, MOST.sheet, detail);
}

function sheetMesh({ radius, lowerEnd, length }: Cylinder, nodes: number): Electrode {
  return sheetElectrode(radius, lowerEnd, length, nodes);
}

function neighbourOf(sheet: Cylinder, round: RoundConductor): Neighbour {
  const part = (round.centreHeight - sheet.lowerEnd) / sheet.length;
  return { part: Math.min(Math.max(part, 0), 1), gap: cylinderGap(round, sheet) };
}

function smallestGap(round: RoundConductor, others: readonly RoundConductor[]): number {
  return Math.min(...others.filter((other) => other !== round).map((other) => roundGap(round, other)));
}

function topLoadNodes(round: RoundConductor, coil: CoilConductors, detail: Detail): number {
  const toGround = 2 * (round.centreHeight - round.sectionRadius);
  const toCeiling = 2 * ((coil.ceilingHeight ?? Infinity) - round.centreHeight - round.sectionRadius);
  const toWall = coil.wall ? cylinderGap(round, coil.wall) : Infinity;
  const toGrounded = smallestGap(round, groundedRounds(coil));
  const toOwn = Math.max(smallestGap(round, coil.topLoad), SAME_POTENTIAL_GAP.topLoad * round.sectionRadius);
  const gap = Math.min(toGround, toCeiling, toWall, toGrounded, toOwn, cylinderGap(round, coil.winding));
  return ringNodes(round.sectionRadius, gap, FEWEST.topLoad, detail);
}

function groundedNodes(round: RoundConductor, coil: CoilConductors, detail: Detail): number {
  const toOwn = Math.max(
    smallestGap(round, groundedRounds(coil)),
    SAME_POTENTIAL_GAP.ring * round.sectionRadius,
  );
  const gap = Math.min(toOwn, smallestGap(round, coil.topLoad), cylinderGap(round, coil.winding));
  return ringNodes(round.sectionRadius, gap, FEWEST.ring, detail);
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

function windingNodes(coil: CoilConductors, detail: Detail): number {
  const { winding, wall, topLoad } = coil;
  const rounds = [...topLoad, ...groundedRounds(coil)].map((round) => neighbourOf(winding, round));
  const image = { part: 0, gap: 2 * winding.lowerEnd };
  const walls = wall ? [besideEachOther(winding, wall)] : [];
  return sheetNodes(winding, [image, ...rounds, ...walls], detail);
}

function wallNodes(wall: Cylinder, coil: CoilConductors, detail: Detail): number {
  const rounds = coil.topLoad.map((round) => neighbourOf(wall, round));
  return sheetNodes(wall, [besideEachOther(coil.winding, wall), ...rounds], detail);
}

/** Nodes of each conductor. */
interface NodeCounts {
  winding: number;
  topLoad: number[];
  grounded: number[];
  wall: number;
}

function nodeCounts(coil: CoilConductors, detail: Detail): NodeCounts {
  return {
    winding: windingNodes(coil, detail),
    topLoad: coil.topLoad.map((round) => topLoadNodes(round, coil, detail)),
    grounded: groundedRounds(coil).map((round) => groundedNodes(round, coil, detail)),
    wall: coil.wall ? wallNodes(coil.wall, coil, detail) : 0,
  };
}

/** What the solve costs, in inverse mean distances. */
function work({ winding, topLoad, grounded, wall }: NodeCounts, coil: CoilConductors): number {
  const others = [...topLoad, ...grounded, wall].reduce((sum, count) => sum + count, 0);
  const pairs = 0.5 * (others * others + winding * winding) + others * winding;
  const distances = pairs * (coil.ceilingHeight === null ? DISTANCES.ground : DISTANCES.ceiling);
  return distances + others ** 3 / 3 / STEPS_PER_DISTANCE;
}

/** As accurate as the bounds of one solve allow. */
function detailFor(coil: CoilConductors, refinement: number): Detail {
  let accuracy = ACCURACY;
  while (accuracy > LEAST_ACCURACY && work(nodeCounts(coil, { accuracy, refinement: 1 }), coil) > MOST_WORK)
    accuracy = Math.max(LEAST_ACCURACY, accuracy * ACCURACY_STEP);
  return { accuracy, refinement };
}

/**
 * Electrodes of a coil whose conductors do not cross.
 * @param refinement whole factor on every number of nodes and functions, the largest ones too; 1 for the
 * accuracy of 10⁻⁴ in the resonance
 */
export function coilMesh(coil: CoilConductors, refinement = 1): CoilMesh {
  const counts = nodeCounts(coil, detailFor(coil, refinement));
  const rounds = groundedRounds(coil).map((round, index) => roundElectrode(round, counts.grounded[index]));
  const winding = sheetMesh(coil.winding, counts.winding);
  return {
    winding,
    topLoad: coil.topLoad.map((round, index) => roundElectrode(round, counts.topLoad[index])),
    grounded: coil.wall ? [...rounds, sheetMesh(coil.wall, counts.wall)] : rounds,
    chargeFunctions: chargeFunctions(winding, refinement),
  };
}
