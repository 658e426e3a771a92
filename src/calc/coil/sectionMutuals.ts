/**
 * Mutual inductance of the primary with equal sections of the secondary, against the tap.
 *
 * The flux that a winding of circular turns sends through an arc is exactly the line integral of r·A_φ
 * along it, so the table is smooth in the tap. Crowding enters, section by section, as the ratio of the
 * solved surface currents to plain circles, known at each whole turn.
 *
 * Sections are those of `sectionInductanceMatrix`: equal fractions of the turns from the lower end.
 */

import { surfaceNodes } from "../field/fluxSolve";
import { ringMutualInductance } from "../field/loops";
import type { RoundWireWinding } from "../field/windingInductance";
import { isOnConductor, type PrimarySolution, RING_POINTS } from "./primary";
import { heightAtTurn, radiusAtTurn } from "./primaryGeometry";
import { turnTableWeights } from "./turnTable";

export interface PlacedWinding extends RoundWireWinding {
  /** m, lower end of the winding */
  baseHeight: number;
}

export interface SectionMutuals {
  solution: PrimarySolution;
  sections: number;
  /** turns of the primary between rows */
  step: number;
  /** H per turn, flux per ampere along the spiral: rows over the tap × sections */
  slope: Float64Array;
  /** H, integral of `slope` */
  spiral: Float64Array;
  /** crowded over circles, (n = 0 … rings) × sections */
  ratio: Float64Array;
}

const STEPS_PER_TURN = 6;
const FEWEST_FILAMENTS = 100;

/** Tabulates all taps at once; then {@link mutualAtTap} is a selection. */
export function sectionMutuals(
  solution: PrimarySolution,
  secondary: PlacedWinding,
  sections: number,
): SectionMutuals {
  const filaments = filamentsOf(secondary, sections, solution.refinement);
  const perTurn = STEPS_PER_TURN * solution.refinement;
  const rows = Math.ceil(solution.tube.turns * perTurn - 1e-9) + 1;
  const slope = new Float64Array(rows * sections);
  for (let i = 0; i < rows; i++) {
    const r = radiusAtTurn(solution.tube, i / perTurn);
    addLinkage(slope, i * sections, filaments, r, heightAtTurn(solution.tube, i / perTurn), 1, false);
  }
  const spiral = cumulativeRows(slope, sections, 1 / perTurn);
  return {
    solution,
    sections,
    step: 1 / perTurn,
    slope,
    spiral,
    ratio: crowdingRatio(solution, filaments, sections),
  };
}

/** H, mutual inductance with each section at a tap; `null` if the tap is not on the conductor. */
export function mutualAtTap(table: SectionMutuals, tap: number): Float64Array | null {
  const { solution, sections, step, slope, spiral, ratio } = table;
  if (!isOnConductor(solution, tap)) return null;
  const rows = slope.length / sections;
  const i = Math.min(Math.floor(tap / step), rows - 2);
  const t = tap / step - i;
  const rise = t * t * (3 - 2 * t);
  const slopeA = step * t * (1 - t) * (1 - t);
  const slopeB = step * t * t * (t - 1);
  const { first, weights } = turnTableWeights(tap, ratio.length / sections - 1);
  return Float64Array.from({ length: sections }, (_, s) => {
    const a = i * sections + s;
    const b = a + sections;
    const arc = (1 - rise) * spiral[a] + rise * spiral[b] + slopeA * slope[a] + slopeB * slope[b];
    let crowding = 0;
    weights.forEach((weight, k) => {
      if (weight !== 0) crowding += weight * ratio[(first + k) * sections + s];
    });
    return arc * crowding;
  });
}

/** Circular filaments that represent the sections' turns. */
interface Filaments {
  radius: number;
  height: Float64Array;
  perSection: number;
  /** turns of one filament */
  turns: number;
}

/** Two-point Gauss rules over equal panels. Source: abramowitzStegun, 25.4.30. */
function filamentsOf(secondary: PlacedWinding, sections: number, refinement: number): Filaments {
  const panels = refinement * Math.max(1, Math.ceil(FEWEST_FILAMENTS / 2 / sections));
  const total = sections * panels * 2;
  const panelHeight = (secondary.turns * secondary.pitch) / (sections * panels);
  const height = Float64Array.from({ length: total }, (_, f) => {
    const offset = (f % 2 === 0 ? -0.5 : 0.5) / Math.sqrt(3);
    return secondary.baseHeight + (Math.floor(f / 2) + 0.5 + offset) * panelHeight;
  });
  return { radius: secondary.radius, height, perSection: panels * 2, turns: secondary.turns / total };
}

/** Adds, for each section, the mutual inductance with one ring (or its image in the floor) times `current`. */
function addLinkage(
  row: Float64Array,
  start: number,
  filaments: Filaments,
  r: number,
  z: number,
  current: number,
  image: boolean,
): void {
  const { radius, height, perSection, turns } = filaments;
  const scale = turns * current;
  for (let f = 0; f < height.length; f++) {
    const at = start + Math.floor(f / perSection);
    let linkage = ringMutualInductance(r, radius, z - height[f]);
    if (image) linkage -= ringMutualInductance(r, radius, z + height[f]);
    row[at] = row[at] + scale * linkage;
  }
}

function crowdingRatio(solution: PrimarySolution, filaments: Filaments, sections: number): Float64Array {
  const { rings, ringCurrent } = solution;
  const count = rings.radius.length;
  const crowdedPerRing = ringLinkages(
    surfaceNodes(rings, RING_POINTS),
    filaments,
    sections,
    solution.floorConducts,
  );
  const circles = ringLinkages({ r: rings.radius, z: rings.height }, filaments, sections, false);
  const ratio = new Float64Array((count + 1) * sections);
  const circle = new Float64Array(sections);
  const points = count * RING_POINTS;
  for (let n = 1; n <= count; n++) {
    for (let s = 0; s < sections; s++) {
      circle[s] = circle[s] + circles[(n - 1) * sections + s];
      let crowded = 0;
      for (let p = 0; p < points; p++) {
        crowded += ringCurrent[n * points + p] * crowdedPerRing[p * sections + s];
      }
      ratio[n * sections + s] = crowded / circle[s];
    }
  }
  ratio.copyWithin(0, sections, 2 * sections);
  return ratio;
}

function ringLinkages(
  rings: { r: Float64Array; z: Float64Array },
  filaments: Filaments,
  sections: number,
  image: boolean,
): Float64Array {
  const rows = new Float64Array(rings.r.length * sections);
  for (let p = 0; p < rings.r.length; p++) {
    addLinkage(rows, p * sections, filaments, rings.r[p], rings.z[p], 1, image);
  }
  return rows;
}

/** Integral along the rows, each interval by the cubic through its four neighbours. */
function cumulativeRows(values: Float64Array, width: number, step: number): Float64Array {
  const rows = values.length / width;
  const integral = new Float64Array(values.length);
  const value = (row: number, s: number) => values[row * width + s];
  for (let i = 0; i + 1 < rows; i++) {
    for (let s = 0; s < width; s++) {
      integral[(i + 1) * width + s] = integral[i * width + s] + step * intervalMean(value, i, s, rows);
    }
  }
  return integral;
}

/** Mean over one interval; at the ends by the parabola through three points. Source: abramowitzStegun, 25.4.5 ff. */
function intervalMean(value: (row: number, s: number) => number, i: number, s: number, rows: number): number {
  const b = value(i, s);
  const c = value(i + 1, s);
  if (rows < 3) return 0.5 * (b + c);
  if (i === 0) return (5 * b + 8 * c - value(2, s)) / 12;
  if (i + 2 === rows) return (5 * c + 8 * b - value(i - 1, s)) / 12;
  return (13 * (b + c) - value(i - 1, s) - value(i + 2, s)) / 24;
}
