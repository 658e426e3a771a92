/** A small clock for what a design costs: seeded data, a sink against idle loops, warm-up, medians. */

/** Another bench whose median is set beside this one's. */
interface Beside {
  /** the other's name in full, and as the table says it */
  name: string;
  shortName: string;
}

export interface Measured {
  name: string;
  /** ms */
  median: number;
  /** ms, nine in ten runs are below */
  ninth: number;
  /** ms, null where there is none */
  goal: number | null;
  beside: Beside | null;
}

export interface Bench {
  name: string;
  /** ms, what the median should stay below; null where there is no goal */
  goal: number | null;
  beside?: Beside;
  /**
   * The run's number comes in, so that no two runs ask the same; what comes out, at once or as a promise, is kept
   * from being idle.
   */
  run: (index: number) => unknown;
  warmUp?: number;
  runs?: number;
}

/** Reading the length of the sink at the end keeps every run's outcome alive. */
const sink: unknown[] = [];

function quantile(sorted: number[], part: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
}

/** Numbers between 0 and 1 that are the same at every run (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

async function timed(run: Bench["run"], index: number): Promise<number> {
  const start = performance.now();
  const outcome = run(index);
  sink[index % 8] = outcome instanceof Promise ? await outcome : outcome;
  return performance.now() - start;
}

/** Warms up, measures each run for itself and takes the median. */
export async function measure({ name, goal, run, beside, warmUp = 20, runs = 60 }: Bench): Promise<Measured> {
  for (let index = 0; index < warmUp; index++) await timed(run, index);
  const times: number[] = [];
  for (let index = 0; index < runs; index++) times.push(await timed(run, warmUp + index));
  times.sort((a, b) => a - b);
  return { name, median: quantile(times, 0.5), ninth: quantile(times, 0.9), goal, beside: beside ?? null };
}

function comparison({ median, beside }: Measured, all: readonly Measured[]): string {
  const other = all.find(({ name }) => name === beside?.name);
  return beside && other ? `${(median / other.median).toFixed(0)} × ${beside.shortName}` : "";
}

function row(measured: Measured, _: number, all: readonly Measured[]): string[] {
  const { name, median, ninth, goal } = measured;
  const ratio = goal === null ? comparison(measured, all) : (median / goal).toFixed(2);
  return [name, median.toFixed(3), ninth.toFixed(3), goal === null ? "" : goal.toFixed(1), ratio];
}

/** A table in plain text: name left, numbers right. */
export function table(measured: Measured[]): string {
  const rows = [
    ["what", "median ms", "9 in 10 ms", "goal ms", "of goal, or of another"],
    ...measured.map(row),
  ];
  const widths = rows[0].map((_, column) => Math.max(...rows.map((cells) => cells[column].length)));
  const line = (cells: string[]) =>
    cells.map((cell, column) => (column ? cell.padStart(widths[column]) : cell.padEnd(widths[0]))).join("  ");
  return `${rows.map(line).join("\n")}\n(${sink.length} outcomes kept)`;
}
