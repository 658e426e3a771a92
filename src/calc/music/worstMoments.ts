/** The worst moment of each curve along a score. */
import type { CoilLoad } from "./coilLoad";
import type { TimeLine } from "./timeLine";

export type ScoreQuantity =
  | "duty"
  | "power"
  | "mainsCurrent"
  | "busVoltage"
  | "junctionTemperature"
  | "bankTemperature";

export interface WorstMoment {
  quantity: ScoreQuantity;
  /** SI */
  value: number;
  /** null if there is none */
  limit: number | null;
  /** s */
  time: number;
  /** SI, of a coil at rest */
  rest: number;
  /** share of the distance from rest to the limit; null without one */
  used: number | null;
}

interface Judged {
  quantity: ScoreQuantity;
  values: readonly number[];
  /** value of a coil at rest */
  rest: number;
  limit: number | null;
}

/** Index of the value that is farthest from rest. */
function farthest(values: readonly number[], rest: number): number {
  let index = 0;
  for (let each = 1; each < values.length; each++)
    if (Math.abs(values[each] - rest) > Math.abs(values[index] - rest)) index = each;
  return index;
}

function usedPart(value: number, rest: number, limit: number | null): number | null {
  if (limit === null) return null;
  return value === rest ? 0 : (value - rest) / (limit - rest);
}

function worst({ quantity, values, rest, limit }: Judged, time: readonly number[]): WorstMoment {
  const index = farthest(values, rest);
  const value = values[index];
  return { quantity, value, limit, rest, time: time[index], used: usedPart(value, rest, limit) };
}

function judged(line: TimeLine, load: CoilLoad | null, dutyLimit: number): Judged[] {
  const duty: Judged = { quantity: "duty", values: line.duty, rest: 0, limit: dutyLimit };
  if (!line.load || !load) return [duty];
  const { power, mainsCurrent, busVoltage, junctionTemperature, bankTemperature } = line.load;
  const { circuitCurrent, leastBusVoltage, junctionLimit, caseTemperature, airTemperature, supply } = load;
  return [
    duty,
    { quantity: "power", values: power, rest: 0, limit: null },
    { quantity: "mainsCurrent", values: mainsCurrent, rest: 0, limit: circuitCurrent },
    { quantity: "busVoltage", values: busVoltage, rest: supply[0].busVoltage, limit: leastBusVoltage },
    {
      quantity: "junctionTemperature",
      values: junctionTemperature,
      rest: caseTemperature,
      limit: junctionLimit,
    },
    { quantity: "bankTemperature", values: bankTemperature, rest: airTemperature, limit: null },
  ];
}

/** One moment for each line, in the order of the lines. */
export function worstMoments(line: TimeLine, load: CoilLoad | null, dutyLimit: number): WorstMoment[] {
  return judged(line, load, dutyLimit).map((each) => worst(each, line.time));
}
