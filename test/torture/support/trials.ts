/** What the rows have in common that try a function many times, without a browser. */
import type { RowResult } from "../row";

const MOST_LOSSES = 10;

/** One try: what is wrong with what came of it; empty where all is well. */
export type Trial = (index: number) => { tried: string; wrong: string };

/**
 * Runs a trial so often; one that throws or takes longer than the limit is lost.
 * @param limit ms
 */
export function runTrials(tries: number, limit: number, trial: Trial): RowResult {
  const losses: string[] = [];
  let slowest = 0;
  for (let index = 0; index < tries; index++) {
    const began = performance.now();
    let loss: string;
    try {
      const { tried, wrong } = trial(index);
      loss = wrong && `${tried}: ${wrong}`;
    } catch (error) {
      loss = `try ${index} threw ${error instanceof Error ? error.stack : error}`;
    }
    const duration = performance.now() - began;
    slowest = Math.max(slowest, duration);
    if (duration > limit) loss ||= `try ${index} took ${Math.round(duration)} ms`;
    if (loss) losses.push(loss);
  }
  const worst = `slowest ${Math.round(slowest)} ms`;
  return { tried: tries, lost: losses.length, worst, losses: losses.slice(0, MOST_LOSSES) };
}

/** What must never stand in a sentence for people. */
const RAW = /NaN|undefined|Infinity|\[object|TypeError|RangeError|SyntaxError|at position \d/;

/** Whether a sentence may be shown: whole, of bounded length, in nobody's own words. */
export function mayBeShown(sentence: string): boolean {
  return sentence.length > 0 && sentence.length < 1000 && /[.…]$/.test(sentence) && !RAW.test(sentence);
}

/** Path of the first number within that is none; null where every one is finite. */
export function notFinite(value: unknown, path = ""): string | null {
  if (typeof value === "number") return Number.isFinite(value) ? null : `${path} is ${value}`;
  if (value === null || typeof value !== "object") return null;
  for (const [key, inner] of Object.entries(value)) {
    const found = notFinite(inner, `${path}.${key}`);
    if (found) return found;
  }
  return null;
}
