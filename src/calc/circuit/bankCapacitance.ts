import type { Tank } from "../design-parts";

/** Capacitance of equal units, `strings` in parallel of `unitsInSeries`, F. */
export function bankCapacitance({ unit, unitsInSeries, strings }: Tank): number {
  return (unit.capacitance * strings) / unitsInSeries;
}
