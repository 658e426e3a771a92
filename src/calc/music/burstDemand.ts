import { type CostCurve, type CostName, costCurve, valueAt } from "./burstCost";
import type { CoilLoad } from "./coilLoad";
import { meanTimeCurve } from "./coilLoad";
import { type HeatStep, heatStep } from "./junctionTrack";

/** The load of one burst of a gate. */
export interface BurstDemand {
  energy: number;
  bankHeat: number;
  sag: number;
  switchHeat: number;
  junctionRise: number;
  /** s, of the worst of mains, bus and bank */
  meanTime: number;
  heat: HeatStep;
}

function burstOf(
  load: CoilLoad,
  curves: Record<CostName, CostCurve>,
  mean: CostCurve,
  onTime: number,
): BurstDemand {
  const at = (name: CostName) => valueAt(curves[name], onTime);
  return {
    energy: at("energy"),
    bankHeat: at("bankHeat"),
    sag: at("sag"),
    switchHeat: at("switchHeat"),
    junctionRise: at("junctionRise"),
    meanTime: valueAt(mean, onTime),
    heat: heatStep(load.thermal, at("switchHeat"), at("lasts")),
  };
}

const MOST_KNOWN = 4096;

/** Loads of bursts by on-time in whole ns, cached because a note's bursts are alike. */
export function burstDemands(load: CoilLoad): (nanoseconds: number) => BurstDemand {
  const curve = (name: CostName) => costCurve(load.costs, (cost) => cost[name]);
  const curves: Record<CostName, CostCurve> = {
    energy: curve("energy"),
    switchHeat: curve("switchHeat"),
    junctionRise: curve("junctionRise"),
    bankHeat: curve("bankHeat"),
    lasts: curve("lasts"),
    sag: curve("sag"),
    mainsTime: curve("mainsTime"),
    busTime: curve("busTime"),
    bankTime: curve("bankTime"),
  };
  const mean = meanTimeCurve(load);
  const known = new Map<number, BurstDemand>();
  return (nanoseconds) => {
    const remembered = known.get(nanoseconds);
    if (remembered) return remembered;
    if (known.size === MOST_KNOWN) known.clear();
    const burst = burstOf(load, curves, mean, nanoseconds / 1e9);
    known.set(nanoseconds, burst);
    return burst;
  };
}
