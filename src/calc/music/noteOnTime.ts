import type { CoilLimits, Expression } from "./lane";

/**
 * On-time that a note asks for: proportional to its strength, falling with pitch above the knee
 * (common practice, no source).
 * @param strength 0 … 1
 * @param rate Hz, the note's repetition rate
 * @returns s
 */
export function wantedOnTime(expression: Expression, strength: number, rate: number): number {
  const pitch = rate > expression.kneeRate ? (expression.kneeRate / rate) ** expression.pitchExponent : 1;
  return expression.onTime * strength * pitch;
}

/**
 * Longest on-time that a coil allows at a repetition rate; between the table's rates the smaller of
 * its neighbours, so that nothing is allowed that was not computed.
 * @returns s
 */
export function allowedOnTime(limits: CoilLimits, rate: number): number {
  const table = limits.onTimeByRate;
  if (table.length === 0) return limits.longestOnTime;
  const above = table.findIndex((entry) => entry.rate >= rate);
  const next = above < 0 ? table[table.length - 1] : table[above];
  const previous = above > 0 ? table[above - 1] : next;
  return Math.min(limits.longestOnTime, next.onTime, previous.onTime);
}
