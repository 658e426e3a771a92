import type { CoilLimits, Expression } from "./lane";

/**
 * On-time requested by a note: proportional to its strength, falling with pitch above the knee
 * (common practice, no source).
 * @param strength 0 … 1
 * @param rate Hz, the note's repetition rate
 * @returns s
 */
export function wantedOnTime(expression: Expression, strength: number, rate: number): number {
  const pitch = rate > expression.kneeRate ? (expression.kneeRate / rate) ** expression.pitchExponent : 1;
  return expression.onTime * strength * pitch;
}

/** Index of the first rate that is not below a given one; the length if there is none. */
function firstNotBelow(table: CoilLimits["onTimeByRate"], rate: number): number {
  let [low, high] = [0, table.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (table[middle].rate < rate) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Longest on-time that a coil allows at a repetition rate; between the table's rates the smaller of
 * its neighbours, so that nothing is allowed that was not computed.
 * @returns s
 */
export function allowedOnTime(limits: CoilLimits, rate: number): number {
  const table = limits.onTimeByRate;
  if (table.length === 0) return limits.longestOnTime;
  const above = firstNotBelow(table, rate);
  const next = table[Math.min(above, table.length - 1)];
  const previous = table[Math.max(0, Math.min(above, table.length) - 1)];
  return Math.min(limits.longestOnTime, next.onTime, previous.onTime);
}
