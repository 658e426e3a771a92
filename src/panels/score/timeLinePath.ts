/** Paths of the time lines below the notes. */
import type { WorstMoment } from "../../calc/music/worstMoments";

export interface Span {
  from: number;
  to: number;
}

/** Margin above and below, as a fraction of the span. */
const MARGIN = 0.08;

/** From the rest value to the worst value, or to the limit if there is one. */
export function spanOf(values: readonly number[], { limit, rest }: WorstMoment): Span {
  const least = values.reduce((low, each) => Math.min(low, each), Math.min(rest, limit ?? rest));
  const most = values.reduce((high, each) => Math.max(high, each), Math.max(rest, limit ?? rest));
  const margin = MARGIN * (most - least || 1);
  return { from: least - margin, to: most + margin };
}

/** Reduces the values to one per column: the one farthest from rest, so that the worst value stays visible. */
export function columnsOf(values: readonly number[], rest: number, columns: number): readonly number[] {
  if (values.length <= columns) return values;
  const worst = new Array<number>(columns).fill(rest);
  for (let index = 0; index < values.length; index++) {
    const column = Math.floor((index * columns) / values.length);
    if (Math.abs(values[index] - rest) > Math.abs(worst[column] - rest)) worst[column] = values[index];
  }
  return worst;
}

export function yAt(value: number, { from, to }: Span, height: number): number {
  return Number((height * (1 - (value - from) / (to - from))).toFixed(1));
}

/** A step line, constant over each value's width. */
export function linePath(values: readonly number[], span: Span, width: number, height: number): string {
  const step = width / values.length;
  const parts = values.map((value, index) => {
    const y = yAt(value, span, height);
    return `${index === 0 ? `M0 ${y}` : `V${y}`}H${((index + 1) * step).toFixed(1)}`;
  });
  return parts.join("");
}
