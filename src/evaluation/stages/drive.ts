/** Supply, switches and current limit under the design's burst, repeated at its rate. */

import { rmsOfBursts } from "../../calc/circuit/bank";
import type { BurstResult } from "../../calc/circuit/burstResult";
import { commutationAdvice } from "../../calc/circuit/commutationAdvice";
import { currentSense, proposeSense } from "../../calc/circuit/currentTransformer";
import {
  chargingPath,
  noLoadBusVoltage,
  type RectifierResult,
  rectifierUnderLoad,
} from "../../calc/circuit/rectifier";
import {
  discharge,
  fuseHint,
  inrushPeak,
  precharge,
  reservoirRmsCurrent,
} from "../../calc/circuit/reservoir";
import { gateDrive, switchLosses } from "../../calc/circuit/switchLosses";
import type { DesignParts, Supply } from "../../calc/design-parts";
import type { DriveResult } from "../driveResults";
import { stage } from "../stage";
import { meanFrequency } from "./burstOutcome";

type Parts = Pick<DesignParts, "drive" | "interrupter">;

/** V that a proposed chain gives at the limit where the comparator's level is left open: half of a 5 V supply. */
const COMPARATOR_VOLTAGE = 2.5;

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

/** A half bridge loads each half of its reservoir in every other half cycle. */
function burstSquareTime({ bridge }: DesignParts["drive"], burst: BurstResult): number {
  return (bridge === "half" ? 0.5 : 1) * burst.squareCurrentTime;
}

const rectifierStage = stage(
  ({ drive: { supply, reservoirCapacitance } }) => ({ supply, reservoirCapacitance }),
  ({ supply, reservoirCapacitance }, power: number) =>
    rectifierUnderLoad({ supply, reservoirCapacitance, power }),
);

/** What a line of the mains carries; a bench supply's mains side is its own affair. */
function mainsSide({ arrangement }: Supply, { mainsCurrent, apparentPower, powerFactor }: RectifierResult) {
  if (arrangement === "bench")
    return { mainsCurrent: null, apparentPower: null, powerFactor: null, fuseHint: null };
  return { mainsCurrent, apparentPower, powerFactor, fuseHint: fuseHint(mainsCurrent) };
}

function supplyResult(design: DesignParts, burst: BurstResult, power: number) {
  const { drive, interrupter } = design;
  const { supply, reservoirCapacitance } = drive;
  const busVoltage = noLoadBusVoltage(supply);
  const loaded = rectifierStage(design, power);
  const path = chargingPath(supply, reservoirCapacitance);
  const charging = precharge(path.capacitance, path.voltage, supply.prechargeResistance);
  const discharging = discharge(reservoirCapacitance, busVoltage, supply.dischargeResistance);
  return {
    busVoltage,
    meanBusVoltage: loaded.meanVoltage,
    lowestBusVoltage: loaded.lowestVoltage,
    busRipple: loaded.ripple,
    chargingCurrent: loaded.peakCurrent,
    ...mainsSide(supply, loaded),
    carriesLoad: loaded.carriesLoad,
    reservoirRmsCurrent: reservoirRmsCurrent(
      loaded.rmsCurrent,
      loaded.meanCurrent,
      burstSquareTime(drive, burst),
      interrupter.repetitionRate,
    ),
    reservoirEnergy: discharging.energy,
    inrushCurrent: finite(inrushPeak(path.voltage, path.resistance, path.inductance, path.capacitance)),
    prechargeCurrent: charging.peakCurrent,
    prechargeTime: path.turns * charging.time,
    prechargeEnergy: discharging.energy,
    dischargeTime: discharging.timeToSafe,
    dischargePower: discharging.power,
  };
}

function switchResult({ drive, interrupter }: Parts, burst: BurstResult, frequency: number) {
  const losses = switchLosses(drive, burst, interrupter.repetitionRate);
  const gate = gateDrive(drive, burst, interrupter.repetitionRate);
  const advice = commutationAdvice(drive, frequency, burst.peakPrimaryCurrent.value);
  const feedback = drive.commutation.mode === "primary current";
  return {
    junctionTemperature: losses.peakJunction,
    meanJunctionTemperature: losses.meanJunction,
    junctionRise: losses.rise.withinBurst,
    junctionMargin: losses.margin,
    switchPower: losses.power,
    conductionEnergy: losses.conductionEnergy,
    turnOffEnergy: losses.turnOffEnergy,
    switchPeakCurrent: losses.peakCurrent,
    turnOffCurrent: losses.turnOffCurrent,
    gatePeakCurrent: finite(gate.peakCurrent),
    gatePower: gate.power,
    leadAtZero: feedback ? advice.leadAtZero : null,
    leadAcrossDeadTime: feedback ? advice.leadAcrossDeadTime : null,
    longestDeadTime: feedback ? advice.longestDeadTime : null,
    turnOffAdvance: feedback ? advice.advance : null,
  };
}

function limitResult({ drive, interrupter }: Parts, burst: BurstResult, frequency: number) {
  const { currentTransformer, overCurrentLimit } = drive;
  const rms = rmsOfBursts(burst.squareCurrentTime, interrupter.repetitionRate);
  const peak = burst.peakPrimaryCurrent.value;
  const atLimit = currentSense(currentTransformer, overCurrentLimit, rms, frequency);
  const atPeak = currentSense(currentTransformer, Math.max(peak, overCurrentLimit), rms, frequency);
  return {
    transformerRatio: atLimit.ratio,
    limitVoltageAtComparator: atLimit.voltage,
    peakVoltageAtComparator: (peak / atLimit.ratio) * currentTransformer.burden,
    burdenPower: atLimit.burdenPower,
    coreFluxDensity: finite(Math.max(...atPeak.cores.map(({ fluxDensity }) => fluxDensity))),
    senseProposal: proposeSense(overCurrentLimit, currentTransformer.comparatorVoltage ?? COMPARATOR_VOLTAGE),
  };
}

/** @param resonance Hz, of the primary: the frequency where a burst has no cycle */
export function driveResult(design: DesignParts, burst: BurstResult, resonance: number): DriveResult {
  const { supplied, returned, turnOff } = burst.energy;
  const { onTime, repetitionRate } = design.interrupter;
  const averagePower = Math.max(0, supplied - returned + turnOff) * repetitionRate;
  const frequency = meanFrequency(burst) ?? resonance;
  return {
    averagePower,
    duty: onTime * repetitionRate,
    ...supplyResult(design, burst, averagePower),
    ...switchResult(design, burst, frequency),
    ...limitResult(design, burst, frequency),
  };
}
