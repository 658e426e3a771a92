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
import { meanFrequency } from "../burst/burstOutcome";
import type { DriveAtRest, DriveResult, DriveUnderBurst } from "../driveResults";
import { stage } from "../stage";

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

/** A hint above the circuit's own rating would be none. */
function fuseWithin(circuitCurrent: number, mainsCurrent: number): number | null {
  const hint = fuseHint(mainsCurrent);
  return hint !== null && hint <= circuitCurrent ? hint : null;
}

/** What a line of the mains carries; a bench supply's mains side is its own affair. */
function mainsSide(
  { arrangement, circuitCurrent }: Supply,
  { mainsCurrent, apparentPower, powerFactor }: RectifierResult,
) {
  if (arrangement === "bench")
    return { mainsCurrent: null, apparentPower: null, powerFactor: null, fuseHint: null };
  return { mainsCurrent, apparentPower, powerFactor, fuseHint: fuseWithin(circuitCurrent, mainsCurrent) };
}

function supplyResult(design: DesignParts, burst: BurstResult, power: number) {
  const loaded = rectifierStage(design, power);
  return {
    meanBusVoltage: loaded.meanVoltage,
    lowestBusVoltage: loaded.lowestVoltage,
    busRipple: loaded.ripple,
    chargingCurrent: loaded.peakCurrent,
    ...mainsSide(design.drive.supply, loaded),
    carriesLoad: loaded.carriesLoad,
    reservoirRmsCurrent: reservoirRmsCurrent(
      loaded.rmsCurrent,
      loaded.meanCurrent,
      burstSquareTime(design.drive, burst),
      design.interrupter.repetitionRate,
    ),
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
    commutationCurrent: losses.commutationCurrent,
    gatePeakCurrent: finite(gate.peakCurrent),
    gatePower: gate.power,
    leadAtZero: feedback ? advice.leadAtZero : null,
    leadAcrossDeadTime: feedback ? advice.leadAcrossDeadTime : null,
    longestDeadTime: feedback ? advice.longestDeadTime : null,
    turnOffAdvance: feedback ? advice.advance : null,
  };
}

function senseResult({ drive, interrupter }: Parts, burst: BurstResult, frequency: number) {
  const { currentTransformer, overCurrentLimit } = drive;
  const rms = rmsOfBursts(burst.squareCurrentTime, interrupter.repetitionRate);
  const peak = burst.peakPrimaryCurrent.value;
  const atPeak = currentSense(currentTransformer, peak, rms, frequency);
  const atMost = currentSense(currentTransformer, Math.max(peak, overCurrentLimit), rms, frequency);
  return {
    peakVoltageAtComparator: atPeak.voltage,
    burdenPower: atPeak.burdenPower,
    coreFluxDensity: finite(Math.max(...atMost.cores.map(({ fluxDensity }) => fluxDensity))),
  };
}

/** @param resonance Hz, of the primary: the frequency where a burst has no cycle */
function underBurst(design: DesignParts, burst: BurstResult, resonance: number): DriveUnderBurst {
  const { supplied, returned, turnOff } = burst.energy;
  const averagePower = Math.max(0, supplied - returned + turnOff) * design.interrupter.repetitionRate;
  const frequency = meanFrequency(burst) ?? resonance;
  return {
    averagePower,
    ...supplyResult(design, burst, averagePower),
    ...switchResult(design, burst, frequency),
    ...senseResult(design, burst, frequency),
  };
}

const NOT_KNOWN: Record<keyof DriveUnderBurst, null> = {
  averagePower: null,
  meanBusVoltage: null,
  lowestBusVoltage: null,
  busRipple: null,
  chargingCurrent: null,
  mainsCurrent: null,
  apparentPower: null,
  powerFactor: null,
  carriesLoad: null,
  fuseHint: null,
  reservoirRmsCurrent: null,
  junctionTemperature: null,
  meanJunctionTemperature: null,
  junctionRise: null,
  junctionMargin: null,
  switchPower: null,
  conductionEnergy: null,
  turnOffEnergy: null,
  switchPeakCurrent: null,
  turnOffCurrent: null,
  commutationCurrent: null,
  gatePeakCurrent: null,
  gatePower: null,
  leadAtZero: null,
  leadAcrossDeadTime: null,
  longestDeadTime: null,
  turnOffAdvance: null,
  peakVoltageAtComparator: null,
  burdenPower: null,
  coreFluxDensity: null,
};

function atRest({ drive, interrupter }: Parts): DriveAtRest {
  const { supply, reservoirCapacitance, currentTransformer, overCurrentLimit } = drive;
  const busVoltage = noLoadBusVoltage(supply);
  const path = chargingPath(supply, reservoirCapacitance);
  const charging = precharge(path.capacitance, path.voltage, supply.prechargeResistance);
  const discharging = discharge(reservoirCapacitance, busVoltage, supply.dischargeResistance);
  const { ratio, voltage } = currentSense(currentTransformer, overCurrentLimit, 0, 1);
  return {
    busVoltage,
    duty: interrupter.onTime * interrupter.repetitionRate,
    reservoirEnergy: discharging.energy,
    inrushCurrent: finite(inrushPeak(path.voltage, path.resistance, path.inductance, path.capacitance)),
    prechargeCurrent: charging.peakCurrent,
    prechargeTime: path.turns * charging.time,
    prechargeEnergy: discharging.energy,
    dischargeTime: discharging.timeToSafe,
    dischargePower: discharging.power,
    transformerRatio: ratio,
    limitVoltageAtComparator: voltage,
    senseProposal: proposeSense(overCurrentLimit, currentTransformer.comparatorVoltage ?? COMPARATOR_VOLTAGE),
  };
}

/**
 * @param burst null while it cannot be computed: what the drive is at rest stays known
 * @param resonance Hz, of the primary: the frequency where a burst has no cycle
 */
export function driveResult(design: DesignParts, burst: BurstResult | null, resonance: number): DriveResult {
  return { ...atRest(design), ...(burst ? underBurst(design, burst, resonance) : NOT_KNOWN) };
}
