/**
 * The primary's magnetic solve: everything that does not depend on the tap, and the tap as a selection.
 *
 * The true spiral's inductance (smooth in the tap) is multiplied by the ratio of two circle models:
 * perfect conductors with crowded surface currents, unused turns present without net current, over
 * plain ring formulas. The ratio is known at each whole turn and interpolated smoothly.
 */
import { type FluxSolution, fluxSystem, type RoundTurns, solveFlux } from "../field/fluxSolve";
import { ringMutualInductance, ringSelfInductance, SURFACE_CURRENT } from "../field/loops";
import { type SpiralTable, spiralInductance, tabulateSpiral } from "../field/spiralInductance";
import {
  advancePerTurn,
  conductorLength,
  heightAtTurn,
  isSolvableShape,
  type PrimaryShape,
  radiusAtTurn,
} from "./primaryGeometry";
import { tubeInternalInductance } from "./skinEffect";
import { readTurnTable } from "./turnTable";

export interface PrimaryTube extends PrimaryShape {
  /** m */
  wallThickness: number;
}

export interface PrimaryOptions {
  /** multiplies the nodes, for checks of convergence; 1 by default */
  refinement?: number;
  /** the floor z = 0 carries no magnetic flux */
  floorConducts?: boolean;
}

/** Tables over whole turns n = 0 … rings carry the entry of n = 1 at 0 where 0 has no meaning. */
export interface PrimarySolution {
  tube: PrimaryTube;
  floorConducts: boolean;
  refinement: number;
  spiral: SpiralTable;
  /** circles that represent the turns; a partial last turn counts as one */
  rings: RoundTurns;
  /** crowded inductance over the circle sum, at n turns */
  inductanceRatio: Float64Array;
  /** H, mutual inductance of the first n turns and the rest */
  unusedMutual: Float64Array;
  /** loss over that of evenly spread surface current in n turns */
  lossFactor: Float64Array;
  /** ring currents per ampere that represent n active turns: (n) × (rings × {@link RING_POINTS}) */
  ringCurrent: Float64Array;
}

/** Points round each conductor that carry its surface current towards the secondary. */
export const RING_POINTS = 6;

/**
 * Solves the primary without its tap. `null` if the shape has no solution: a size that is not positive
 * or not finite, turns that touch, all but touch or reach the axis, more than 60 turns, or copper in a conducting floor.
 *
 * Against the perfect-conductor references: 2·10⁻⁷.
 * Source: as in `fluxSolve`; as in `spiralInductance`.
 */
export function solvePrimary(tube: PrimaryTube, options: PrimaryOptions = {}): PrimarySolution | null {
  if (!isSolvableShape(tube) || (tube.turns > 1 && tube.pitch < closestPitch(tube))) return null;
  const { refinement = 1, floorConducts = false } = options;
  const count = Math.ceil(tube.turns - 1e-9);
  const solution = emptySolution(tube, count, refinement, floorConducts);
  const system = fluxSystem(solution.rings, nodesPerTurn(tube, refinement), floorConducts);
  for (const { rings, share } of wholeTurnShares(tube.turns, count)) {
    const flux = system && solveFlux(system, rings);
    if (flux === null) return null;
    addFlux(solution, flux, share);
  }
  fillZeroTurns(solution);
  return solution;
}

/** A partial last turn: the solves without and with it are blended, so that results are continuous in the turns. */
function wholeTurnShares(turns: number, count: number): { rings: number; share: number }[] {
  const part = turns - (count - 1);
  if (count === 1 || part > 1 - 1e-9) return [{ rings: count, share: 1 }];
  return [
    { rings: count - 1, share: 1 - part },
    { rings: count, share: part },
  ];
}

/** The closer the turns, the sharper the current crowding; the cap limits the time for many close turns. */
function nodesPerTurn(tube: PrimaryTube, refinement: number): number {
  const spacing = tube.turns > 1 ? tube.pitch / tube.tubeDiameter : 2;
  const wanted = NODES_BY_SPACING.find(([least]) => spacing > least)?.[1] ?? CLOSEST_NODES;
  return 2 * Math.round((Math.min(wanted, mostNodes(tube)) * refinement) / 2);
}

function mostNodes({ turns }: PrimaryShape): number {
  return Math.max(FEWEST_NODES, MOST_UNKNOWNS / turns);
}

/**
 * m, the least pitch at which the most nodes that turns can be given still follow how their current crowds: below
 * it the inductance is off by half a per cent and more, the resistance by a fifth.
 */
export function closestPitch(tube: PrimaryShape): number {
  const nodes = Math.min(CLOSEST_NODES, mostNodes(tube));
  return tube.tubeDiameter * (1 + (0.5 * LEAST_NODES_PER_GAP) / nodes);
}

const NODES_BY_SPACING: [[number, number], ...[number, number][]] = [
  [1.3, 12],
  [1.12, 18],
  [1.06, 30],
];
const CLOSEST_NODES = 64;
const FEWEST_NODES = 8;
/** Nodes times the gap between turns over the conductor's radius. */
const LEAST_NODES_PER_GAP = 2.4;
const MOST_UNKNOWNS = 400;

/** The circle for turn n is at the turn's middle. */
function ringsOf(tube: PrimaryTube, count: number): RoundTurns {
  return {
    radius: Float64Array.from({ length: count }, (_, i) => radiusAtTurn(tube, i + 0.5)),
    height: Float64Array.from({ length: count }, (_, i) => heightAtTurn(tube, i + 0.5)),
    conductorRadius: tube.tubeDiameter / 2,
  };
}

function emptySolution(
  tube: PrimaryTube,
  count: number,
  refinement: number,
  floorConducts: boolean,
): PrimarySolution {
  const { radial, axial } = advancePerTurn(tube);
  const spiral = {
    radius: tube.innerRadius,
    radialAdvance: radial,
    axialAdvance: axial,
    conductorRadius: tube.tubeDiameter / 2,
    turns: tube.turns,
  };
  return {
    tube,
    floorConducts,
    refinement,
    spiral: tabulateSpiral(spiral, refinement),
    rings: ringsOf(tube, count),
    inductanceRatio: new Float64Array(count + 1),
    unusedMutual: new Float64Array(count + 1),
    lossFactor: new Float64Array(count + 1),
    ringCurrent: new Float64Array((count + 1) * count * RING_POINTS),
  };
}

/** Adds one solve; the partial last turn has only the solve that contains it. */
function addFlux(solution: PrimarySolution, flux: FluxSolution, share: number): void {
  const { turns, nodesPerTurn: nodes } = flux;
  const count = solution.rings.radius.length;
  const current = new Float64Array(turns * nodes);
  const projection = ringProjection(nodes);
  let circle = 0;
  let crowded = 0;
  for (let n = 1; n <= turns; n++) {
    const weight = n === count ? 1 : share;
    circle += circleRow(solution.rings, n);
    crowded += ownRow(flux, n);
    for (let k = 0; k < current.length; k++) {
      current[k] = current[k] + flux.surfaceCurrent[(n - 1) * turns * nodes + k];
    }
    add(solution.inductanceRatio, n, (weight * crowded) / circle);
    add(solution.unusedMutual, n, weight * restRows(flux, n));
    add(solution.lossFactor, n, weight * lossFactor(solution.rings, current, nodes, n));
    addRingCurrent(solution, current, projection, n, weight);
  }
}

function add(table: Float64Array, at: number, value: number): void {
  table[at] = table[at] + value;
}

/** What the n-th ring adds to the ring-formula sum of the rings before it. */
function circleRow(rings: RoundTurns, n: number): number {
  const r = rings.radius[n - 1];
  const z = rings.height[n - 1];
  let sum = ringSelfInductance(r, rings.conductorRadius, SURFACE_CURRENT);
  for (let i = 0; i < n - 1; i++) {
    sum += 2 * ringMutualInductance(r, rings.radius[i], z - rings.height[i]);
  }
  return sum;
}

function ownRow(flux: FluxSolution, n: number): number {
  let sum = flux.inductance[(n - 1) * flux.turns + n - 1];
  for (let i = 0; i < n - 1; i++) sum += 2 * flux.inductance[(n - 1) * flux.turns + i];
  return sum;
}

function restRows(flux: FluxSolution, n: number): number {
  let sum = 0;
  for (let i = n; i < flux.turns; i++) {
    for (let j = 0; j < n; j++) sum += flux.inductance[i * flux.turns + j];
  }
  return sum;
}

/** ∮K² over all turns, unused ones with their eddy currents, over n turns with even surface current. */
function lossFactor(rings: RoundTurns, current: Float64Array, nodes: number, n: number): number {
  let loss = 0;
  let even = 0;
  for (let i = 0; i < n; i++) even += rings.radius[i];
  for (let k = 0; k < current.length; k++) {
    const angle = (2 * Math.PI * (k % nodes)) / nodes;
    const radius = rings.radius[Math.floor(k / nodes)] + rings.conductorRadius * Math.cos(angle);
    loss += radius * current[k] ** 2;
  }
  return (nodes * loss) / even;
}

/** Trigonometric projection of the surface current on {@link RING_POINTS} rings (harmonics 0, 1, 2). */
function ringProjection(nodes: number): Float64Array {
  const projection = new Float64Array(RING_POINTS * nodes);
  for (let at = 0; at < projection.length; at++) {
    const angle = 2 * Math.PI * (Math.floor(at / nodes) / RING_POINTS - (at % nodes) / nodes);
    projection[at] = (1 + 2 * Math.cos(angle) + 2 * Math.cos(2 * angle)) / RING_POINTS;
  }
  return projection;
}

function addRingCurrent(
  solution: PrimarySolution,
  current: Float64Array,
  projection: Float64Array,
  n: number,
  weight: number,
): void {
  const nodes = projection.length / RING_POINTS;
  const row = n * solution.rings.radius.length * RING_POINTS;
  const points = (current.length / nodes) * RING_POINTS;
  for (let p = 0; p < points; p++) {
    const turn = Math.floor(p / RING_POINTS);
    const point = p % RING_POINTS;
    let sum = 0;
    for (let k = 0; k < nodes; k++) {
      sum += projection[point * nodes + k] * current[turn * nodes + k];
    }
    add(solution.ringCurrent, row + p, weight * sum);
  }
}

function fillZeroTurns(solution: PrimarySolution): void {
  solution.inductanceRatio[0] = solution.inductanceRatio[1];
  solution.lossFactor[0] = solution.lossFactor[1];
}

export interface PrimaryAtTap {
  /** H, at working frequency: current on the tube's surface, crowded; without leads */
  inductance: number;
  /** H, at low frequency: current even over the wall (what a meter reads); without leads */
  lowFrequencyInductance: number;
  /** m, from the start to the tap */
  conductorLength: number;
  /** m, conductor's centre at the tap */
  radius: number;
  height: number;
  /** volts from the start to the free end per volt from the start to the tap, ≥ 1 */
  freeEndStepUp: number;
}

/** The primary at a tap; `null` for a tap that is not on the conductor (≤ 0, > turns, not a number). */
export function primaryAtTap(solution: PrimarySolution, tap: number): PrimaryAtTap | null {
  const { tube } = solution;
  if (!isOnConductor(solution, tap)) return null;
  const spiral = spiralInductance(solution.spiral, tap);
  const inductance = spiral * readTurnTable(solution.inductanceRatio, tap);
  const length = conductorLength(tube, tap);
  const internal = tubeInternalInductance(tube.tubeDiameter / 2, tube.wallThickness);
  return {
    inductance,
    lowFrequencyInductance: spiral + internal * length,
    conductorLength: length,
    radius: radiusAtTurn(tube, tap),
    height: heightAtTurn(tube, tap),
    freeEndStepUp: 1 + Math.max(0, readTurnTable(solution.unusedMutual, tap)) / inductance,
  };
}

/** Whether the tap is on the conductor: 0 < tap ≤ turns. */
export function isOnConductor(solution: PrimarySolution, tap: number): boolean {
  return tap > 0 && tap <= solution.tube.turns;
}
