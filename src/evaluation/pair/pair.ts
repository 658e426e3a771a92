/** Two coils of a show side by side; all in SI units, never saved. */

import { railVoltage } from "../../calc/circuit/bridge";
import { noLoadBusVoltage } from "../../calc/circuit/rectifier";
import { chargeRings } from "../../calc/coil/chargeRings";
import { inducedVoltage } from "../../calc/coil/inducedVoltage";
import { type PairCoupling, type PairedCoil, pairCoupling } from "../../calc/coil/pairCoupling";
import { resonanceBeside, type SplitResonances, splitResonances } from "../../calc/coil/pairResonances";
import type { Design } from "../../design/design";
import { spacingField } from "../../design/fields/score";
import type { Show } from "../../design/show";
import { designBursts } from "../burst/burstStage";
import { primarySolutionStage } from "../primary/primaryStages";
import { conductorsStage } from "../secondary/fieldStages";
import { solveCoil } from "../solvedCoil";
import { breakoutVoltage, topLoadResult } from "../topLoad/topLoadStage";
import { mostEnergyTap } from "../tuning/energySweepStage";
import { suggestionStage, targetResonance } from "../tuning/tuningStages";

export interface CoilBeside {
  /** Hz, alone */
  resonance: number;
  /** Hz, with the other at the same top voltage in the phase that is set */
  resonanceBeside: number;
  /** turns for the aim, alone and beside the other; null where it cannot be reached */
  suggestedTap: number | null;
  retunedTap: number | null;
  /** V, at which the top load breaks out: at its point where it has one, by itself else */
  breakoutVoltage: number;
  /** V, largest of its burst; its breakout voltage where it has no burst */
  topVoltage: number;
  /** what a burst of the other leaves in this one while it is idle; null where the other has no burst or this one does not ring */
  induced: Induced | null;
}

/** Largest magnitudes in an idle coil while the other bursts at its design's on-time. */
export interface Induced {
  /** V at the top */
  voltage: number;
  /** part of this coil's own breakout voltage */
  partOfBreakout: number;
  /** A at the foot of the winding */
  baseCurrent: number;
  /** V across the open primary with its bank; null without a primary */
  primaryVoltage: number | null;
  /** the figures are upper bounds: so much is taken, or the idle bridge's diodes conduct, that it reacts on the burst */
  bound: boolean;
}

export interface PairResult {
  coupling: PairCoupling;
  split: SplitResonances;
  left: CoilBeside;
  right: CoilBeside;
  /** m, between the nearest points of the top loads */
  gap: number;
  /** V between the top loads, both at their top voltage in the phase that is set */
  voltageBetween: number;
  /** V/m, that voltage over the gap */
  meanField: number;
  /** m, both sparks that the designs are made for, end to end */
  sparkReach: number;
}

export type PairOutcome = { ok: true; pair: PairResult } | { ok: false; message: string };

/** A coil as far as its partner is concerned. */
interface Solved {
  design: Design;
  coil: PairedCoil;
  target: number | null;
  breakoutVoltage: number;
  topVoltage: number;
  qualityFactor: number;
  /** A at the foot for a volt at the top */
  baseCurrent: number;
}

function solved(design: Design): Solved | null {
  const solution = solveCoil(design);
  const { field, modes, secondary: circuit } = solution;
  const top = topLoadResult(design, field, modes);
  const rings = field && modes && chargeRings(field, modes.loaded[0]);
  if (!modes || !circuit || !top || !rings) return null;
  const { winding } = modes.inductance;
  const { baseHeight, windingLength } = design.secondary;
  const breaksOutAt = breakoutVoltage(top) ?? top.breakoutVoltage;
  const { resonance, capacitance, inductance, current, qualityFactor, baseCurrent } = circuit.modes[0];
  return {
    design,
    coil: {
      radius: winding.radius,
      lowerEnd: baseHeight,
      windingLength,
      turns: winding.turns,
      current,
      rings,
      resonance,
      capacitance,
      inductance,
    },
    target: targetResonance(design, solution, mostEnergyTap(design)),
    breakoutVoltage: breaksOutAt,
    topVoltage: designBursts(design, solution)?.loaded.result.peakTopVoltage.value ?? breaksOutAt,
    qualityFactor,
    baseCurrent,
  };
}

/** V across an open primary for a volt at the top of its own secondary: k·√(L_p/Lₛ), at the resonance. */
function primaryPerTopVoltage({ design, coil }: Solved): number | null {
  const { primary, coupling } = solveCoil(design);
  if (!primary || !coupling) return null;
  return coupling.result.circuit * Math.sqrt(primary.inductance / coil.inductance);
}

/** Part of a burst's net energy in the idle coil beyond which what it gives back can no longer be left out. */
const MOST_TAKEN = 0.1;

/** Quality factor below which a coil does not ring at all. */
const LEAST_RINGING = 0.5;

/** V that an idle bridge's diodes let stand across its primary. */
function bridgeVoltage({ supply, bridge }: Design["drive"]): number {
  return railVoltage({ bridge, busVoltage: noLoadBusVoltage(supply) });
}

function inducedIn(idle: Solved, playing: Solved, coupling: PairCoupling): Induced | null {
  const burst = designBursts(playing.design)?.loaded.result;
  if (!burst || !(idle.qualityFactor > LEAST_RINGING)) return null;
  const { time, topVoltage } = burst.waveform;
  const { coil, qualityFactor } = idle;
  const wave = inducedVoltage(playing.coil, { ...coil, qualityFactor }, coupling, {
    time,
    voltage: topVoltage,
  });
  const voltage = wave.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  const perVolt = primaryPerTopVoltage(idle);
  const primaryVoltage = perVolt === null ? null : perVolt * voltage;
  const { supplied, returned } = burst.energy;
  const taken = 0.5 * coil.capacitance * voltage * voltage;
  return {
    voltage,
    partOfBreakout: voltage / idle.breakoutVoltage,
    baseCurrent: voltage * idle.baseCurrent,
    primaryVoltage,
    bound:
      taken > MOST_TAKEN * (supplied - returned) || (primaryVoltage ?? 0) > bridgeVoltage(idle.design.drive),
  };
}

function tapFor({ design }: Solved, target: number | null): number | null {
  return suggestionStage(design, primarySolutionStage(design), target)?.tap ?? null;
}

function beside(own: Solved, other: Solved, coupling: PairCoupling, sense: 1 | -1): CoilBeside {
  const resonance = resonanceBeside(own.coil, other.coil, coupling, sense);
  const retuned = own.target === null ? null : (own.target * resonance) / own.coil.resonance;
  return {
    resonance: own.coil.resonance,
    resonanceBeside: resonance,
    suggestedTap: tapFor(own, own.target),
    retunedTap: tapFor(own, retuned),
    breakoutVoltage: own.breakoutVoltage,
    topVoltage: own.topVoltage,
    induced: inducedIn(own, other, coupling),
  };
}

/** m, from the axis to the farthest conductor of a coil. */
function reach(rings: PairedCoil["rings"]): number {
  return rings.reduce((most, { radius }) => Math.max(most, radius), 0);
}

/** Nearest points of two top loads, element by element, m. */
function topLoadGap(left: Design, right: Design, spacing: number): number {
  const rounds = (design: Design) => conductorsStage(design).coil?.topLoad ?? [];
  const gaps = rounds(left).flatMap((a) =>
    rounds(right).map((b) => {
      const across = spacing - a.centreRadius - b.centreRadius;
      return Math.hypot(across, a.centreHeight - b.centreHeight) - a.sectionRadius - b.sectionRadius;
    }),
  );
  return Math.min(...gaps);
}

/** A wall round each coil would stand between them; the pair is taken in the open, over its floor. */
function withoutRoom(design: Design): Design {
  return { ...design, room: { ...design.room, wallConducts: false, ceilingConducts: false } };
}

/** m; beyond it what the coils do to each other is less than numbers hold. */
const FARTHEST_APART = 1e3 * spacingField.range.maximum;

function tooFar(): string {
  return `The coils stand too far apart to do anything to each other: set the spacing below ${FARTHEST_APART / 1e3} km.`;
}

function cannotStand(spacing: number, least: number): string {
  const text = (metres: number): string => `${Number(metres.toFixed(3))} m`;
  return `The spacing of ${text(spacing)} puts the coils into each other: set it above ${text(least)}.`;
}

/**
 * What two coils do to each other. Walls and ceiling are left out; both windings run in the same sense.
 * @param spacing m, axis to axis
 * @param phase of the top voltages
 * @returns a sentence where a coil has no solution or no top load, or where they stand in each other
 */
export function pairResult(left: Design, right: Design, spacing: number, phase: Show["phase"]): PairOutcome {
  const pair = [left, right].map((design) => solved(withoutRoom(design)));
  const [first, second] = pair;
  if (!first || !second) {
    const name = first ? "right" : "left";
    return {
      ok: false,
      message: `The ${name} coil has no solution: give it a top load and mend its findings.`,
    };
  }
  if (spacing > FARTHEST_APART) return { ok: false, message: tooFar() };
  const least = reach(first.coil.rings) + reach(second.coil.rings);
  if (!(spacing > least)) return { ok: false, message: cannotStand(spacing, least) };
  const floors = left.corrections.floorConducts && right.corrections.floorConducts;
  const coupling = pairCoupling(first.coil, second.coil, spacing, floors);
  const sense = phase === "in phase" ? 1 : -1;
  const gap = topLoadGap(left, right, spacing);
  const voltageBetween = Math.abs(first.topVoltage - sense * second.topVoltage);
  return {
    ok: true,
    pair: {
      coupling,
      split: splitResonances(first.coil, second.coil, coupling),
      left: beside(first, second, coupling, sense),
      right: beside(second, first, coupling, sense),
      gap,
      voltageBetween,
      meanField: voltageBetween / gap,
      sparkReach: left.spark.length + right.spark.length,
    },
  };
}
