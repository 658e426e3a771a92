import { burstDemands } from "./burstDemand";
import type { CoilLoad } from "./coilLoad";
import { repeatedRisePerHeat } from "./junctionTrack";
import { supplyAt } from "./timeLine";

/** The load of a steady tone on a coil; null if the load of the bursts is unknown. */
export interface ToneReading {
  duty: number;
  /** W from the reservoir */
  power: number | null;
  /** A RMS in a line of the mains */
  mainsCurrent: number | null;
  /** K at the worst moment of a burst */
  junctionTemperature: number | null;
}

/**
 * A tone in steady state.
 * @param rate Hz
 * @param onTime s, of each burst
 */
export function toneReading(rate: number, onTime: number, load: CoilLoad | null): ToneReading {
  const duty = rate * onTime;
  if (!load) return { duty, power: null, mainsCurrent: null, junctionTemperature: null };
  const { energy, heat, switchHeat, junctionRise } = burstDemands(load)(onTime * 1e9);
  const power = energy * rate;
  const before = switchHeat * repeatedRisePerHeat(load.thermal, 1 / rate, 1 / rate - heat.lasts);
  return {
    duty,
    power,
    mainsCurrent: supplyAt(load.supply, power).mainsCurrent,
    junctionTemperature: load.caseTemperature + before + junctionRise,
  };
}
