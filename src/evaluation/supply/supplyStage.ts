/** Mains, rectifier and reservoir, at rest and with the design's repeated bursts. */
import type { BurstResult } from "../../calc/burst/burstResult";
import { averagePower, dutyOf } from "../../calc/burst/burstResult";
import { energyTaken } from "../../calc/burst/energyAccount";
import { reservoirShare } from "../../calc/circuit/bridge";
import {
  chargingPath,
  noLoadBusVoltage,
  type RectifierResult,
  rectifierUnderLoad,
} from "../../calc/circuit/rectifier";
import {
  discharge,
  fuseHintWithin,
  inrushPeak,
  prechargeInTurns,
  reservoirRmsCurrent,
} from "../../calc/circuit/reservoir";
import type { DesignParts, Supply } from "../../calc/design-parts";
import { finiteOrNull } from "../../calc/finiteOrNull";
import { stage } from "../stage";
import type { SupplyAtRest, SupplyResult, SupplyUnderBurst } from "./supplyResults";

type Parts = Pick<DesignParts, "drive" | "interrupter">;

const rectifierStage = stage(
  ({ drive: { supply, reservoirCapacitance } }) => ({ supply, reservoirCapacitance }),
  ({ supply, reservoirCapacitance }, power: number) =>
    rectifierUnderLoad({ supply, reservoirCapacitance, power }),
);

/** Current and power from the mains; unknown for a bench supply. */
function mainsSide(
  { arrangement, circuitCurrent }: Supply,
  { mainsCurrent, apparentPower, powerFactor }: RectifierResult,
) {
  if (arrangement === "bench")
    return { mainsCurrent: null, apparentPower: null, powerFactor: null, fuseHint: null };
  const fuseHint = fuseHintWithin(circuitCurrent, mainsCurrent);
  return { mainsCurrent, apparentPower, powerFactor, fuseHint };
}

function underBurst(design: DesignParts, burst: BurstResult): SupplyUnderBurst {
  const { drive, interrupter } = design;
  const power = averagePower(energyTaken(burst.energy), interrupter.repetitionRate);
  const loaded = rectifierStage(design, power);
  return {
    averagePower: power,
    meanBusVoltage: loaded.meanVoltage,
    lowestBusVoltage: loaded.lowestVoltage,
    busRipple: loaded.ripple,
    chargingCurrent: loaded.peakCurrent,
    ...mainsSide(drive.supply, loaded),
    carriesLoad: loaded.carriesLoad,
    reservoirRmsCurrent: reservoirRmsCurrent(
      loaded,
      { squareTime: burst.squareCurrentTime, share: reservoirShare(drive) },
      interrupter.repetitionRate,
    ),
  };
}

const NOT_KNOWN: Record<keyof SupplyUnderBurst, null> = {
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
};

function atRest({ drive, interrupter }: Parts): SupplyAtRest {
  const { supply, reservoirCapacitance } = drive;
  const busVoltage = noLoadBusVoltage(supply);
  const path = chargingPath(supply, reservoirCapacitance);
  const charging = prechargeInTurns(path, supply.prechargeResistance);
  const discharging = discharge(reservoirCapacitance, busVoltage, supply.dischargeResistance);
  const inrush = inrushPeak(path.voltage, path.resistance, path.inductance, path.capacitance);
  return {
    busVoltage,
    duty: dutyOf(interrupter),
    reservoirEnergy: discharging.energy,
    inrushCurrent: finiteOrNull(inrush),
    prechargeCurrent: charging.peakCurrent,
    prechargeTime: charging.time,
    prechargeEnergy: discharging.energy,
    dischargeTime: discharging.timeToSafe,
    dischargePower: discharging.power,
  };
}

/** @param burst null if it cannot be computed; the results at rest do not need it */
export function supplyResult(design: DesignParts, burst: BurstResult | null): SupplyResult {
  return { ...atRest(design), ...(burst ? underBurst(design, burst) : NOT_KNOWN) };
}
