/** Two coils of a show side by side. */
import type { BurstResult } from "../../calc/burst/burstResult";
import { railVoltage } from "../../calc/circuit/bridge";
import { noLoadBusVoltage } from "../../calc/circuit/rectifier";
import { chargeRings } from "../../calc/coil/chargeRings";
import type { RoundConductor } from "../../calc/coil/conductors";
import {
  doesRing,
  type IdleNeighbour,
  type InducedInIdle,
  inducedInIdle,
  openPrimaryPerTopVolt,
} from "../../calc/coil/idleCoil";
import { inducedVoltage } from "../../calc/coil/inducedVoltage";
import { type PairCoupling, type PairedCoil, pairCoupling } from "../../calc/coil/pairCoupling";
import { betweenTops, leastSpacing, topLoadGap } from "../../calc/coil/pairPlacing";
import { aimBeside, resonanceBeside, splitResonances } from "../../calc/coil/pairResonances";
import type { PrimarySolution } from "../../calc/coil/primary";
import type { Design } from "../../design/design";
import type { Show } from "../../design/show";
import { designBursts } from "../burst/burstStage";
import { type SolvedCoil, solveCoil } from "../solvedCoil";
import { breakoutVoltage, topLoadResult } from "../topLoad/topLoadStage";
import { mostEnergyTap } from "../tuning/energySweepStage";
import { suggestionStage, targetResonance } from "../tuning/tuningStages";
import type { CoilBeside, PairOutcome } from "./pairResults";

/** The part of a coil that its partner needs. */
interface Partner {
  design: Design;
  coil: PairedCoil;
  topLoad: readonly RoundConductor[];
  solution: PrimarySolution | null;
  /** Hz */
  aim: number | null;
  /** V, peak of its burst; its breakout voltage if it has no burst */
  topVoltage: number;
  burst: BurstResult | null;
  idle: IdleNeighbour;
}

function primaryPerVolt({ primary, coupling, secondary }: SolvedCoil): number | null {
  if (!primary || !coupling || !secondary) return null;
  return openPrimaryPerTopVolt(coupling.result.circuit, primary.inductance, secondary.modes[0].inductance);
}

/** V across an idle primary at which its bridge's diodes conduct. */
function bridgeVoltage({ supply, bridge }: Design["drive"]): number {
  return railVoltage({ bridge, busVoltage: noLoadBusVoltage(supply) });
}

function partner(design: Design): Partner | null {
  const solved = solveCoil(design);
  const { field, modes, secondary: circuit } = solved;
  const top = topLoadResult(design, field, modes);
  const rings = field && modes && chargeRings(field, modes.loaded[0]);
  if (!modes || !circuit || !top || !rings) return null;
  const { winding } = modes.inductance;
  const { baseHeight, windingLength } = design.secondary;
  const breaksOutAt = breakoutVoltage(top) ?? top.breakoutVoltage;
  const { resonance, capacitance, inductance, current, qualityFactor, baseCurrent } = circuit.modes[0];
  const burst = designBursts(design, solved)?.loaded.result ?? null;
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
    topLoad: solved.conductors.coil?.topLoad ?? [],
    solution: solved.solution,
    aim: targetResonance(design, solved, mostEnergyTap(design)),
    topVoltage: burst?.peakTopVoltage.value ?? breaksOutAt,
    burst,
    idle: {
      capacitance,
      qualityFactor,
      breakoutVoltage: breaksOutAt,
      baseCurrentPerVolt: baseCurrent,
      primaryPerVolt: primaryPerVolt(solved),
      bridgeVoltage: bridgeVoltage(design.drive),
    },
  };
}

function inducedIn(own: Partner, other: Partner, coupling: PairCoupling): InducedInIdle | null {
  const { burst } = other;
  const { coil, idle } = own;
  if (!burst || !doesRing(idle.qualityFactor)) return null;
  const { time, topVoltage: voltage } = burst.waveform;
  const ringing = { ...coil, qualityFactor: idle.qualityFactor };
  const wave = inducedVoltage(other.coil, ringing, coupling, { time, voltage });
  return inducedInIdle(idle, wave, burst.energy.supplied - burst.energy.returned);
}

function tapFor({ design, solution }: Partner, aim: number | null): number | null {
  return suggestionStage(design, solution, aim)?.tap ?? null;
}

function beside(own: Partner, other: Partner, coupling: PairCoupling, sense: 1 | -1): CoilBeside {
  const { resonance } = own.coil;
  const moved = resonanceBeside(own.coil, other.coil, coupling, sense);
  return {
    resonance,
    resonanceBeside: moved,
    suggestedTap: tapFor(own, own.aim),
    retunedTap: tapFor(own, own.aim === null ? null : aimBeside(own.aim, resonance, moved)),
    breakoutVoltage: own.idle.breakoutVoltage,
    topVoltage: own.topVoltage,
    induced: inducedIn(own, other, coupling),
  };
}

/** A conducting wall around each coil would lie between them, so the pair is computed without walls and ceiling. */
function withoutRoom(design: Design): Design {
  return { ...design, room: { ...design.room, wallConducts: false, ceilingConducts: false } };
}

/** m, a thousand times the field's largest value; beyond it the coupling is below the resolution of the numbers. */
const FARTHEST_APART = 20_000;

const TOO_FAR = "The coils are too far apart to couple: set the spacing below 20 km.";

function overlapMessage(spacing: number, least: number): string {
  const text = (metres: number): string => `${Number(metres.toFixed(3))} m`;
  return `At a spacing of ${text(spacing)} the coils overlap: set it above ${text(least)}.`;
}

/**
 * The interaction of two coils, without walls and ceiling; both windings have the same sense.
 * @param spacing m, axis to axis
 * @param phase of the top voltages
 * @returns a message if a coil has no solution or no top load, or if they overlap
 */
export function pairResult(left: Design, right: Design, spacing: number, phase: Show["phase"]): PairOutcome {
  const [first, second] = [left, right].map((design) => partner(withoutRoom(design)));
  if (!first || !second) {
    const name = first ? "right" : "left";
    return {
      ok: false,
      message: `The ${name} coil has no solution: add a top load and resolve its findings.`,
    };
  }
  if (spacing > FARTHEST_APART) return { ok: false, message: TOO_FAR };
  const least = leastSpacing(first.coil.rings, second.coil.rings);
  if (!(spacing > least)) return { ok: false, message: overlapMessage(spacing, least) };
  const floors = left.corrections.floorConducts && right.corrections.floorConducts;
  const coupling = pairCoupling(first.coil, second.coil, spacing, floors);
  const sense = phase === "in phase" ? 1 : -1;
  const gap = topLoadGap(first.topLoad, second.topLoad, spacing);
  return {
    ok: true,
    pair: {
      coupling,
      split: splitResonances(first.coil, second.coil, coupling),
      left: beside(first, second, coupling, sense),
      right: beside(second, first, coupling, sense),
      gap,
      ...betweenTops(first.topVoltage, second.topVoltage, sense, gap),
      sparkReach: left.spark.length + right.spark.length,
    },
  };
}
