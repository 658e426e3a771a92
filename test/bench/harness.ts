/** A small clock for what a design costs: seeded data, a sink against idle loops, warm-up, medians. */

export interface Measured {
  name: string;
  /** ms */
  median: number;
  /** ms, nine in ten runs are below */
  ninth: number;
  /** ms, null where there is none */
  goal: number | null;
}

export interface Bench {
  name: string;
  /** ms, what the median should stay below; null where there is no goal */
  goal: number | null;
  /** the run's number comes in, so that no two runs ask the same; what comes out is kept from being idle */
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

function timed(run: Bench["run"], index: number): number {
  const start = performance.now();
  sink[index % 8] = run(index);
  return performance.now() - start;
}

/** Warms up, measures each run for itself and takes the median. */
export function measure({ name, goal, run, warmUp = 20, runs = 60 }: Bench): Measured {
  for (let index = 0; index < warmUp; index++) timed(run, index);
  const times = Array.from({ length: runs }, (_, index) => timed(run, warmUp + index)).sort((a, b) => a - b);
  return { name, median: quantile(times, 0.5), ninth: quantile(times, 0.9), goal };
}

function row({ name, median, ninth, goal }: Measured): string[] {
  const ratio = goal === null ? "" : (median / goal).toFixed(2);
  return [name, median.toFixed(3), ninth.toFixed(3), goal === null ? "" : goal.toFixed(1), ratio];
}

/** A table in plain text: name left, numbers right. */
export function table(measured: Measured[]): string {
  const rows = [["what", "median ms", "9 in 10 ms", "goal ms", "of goal"], ...measured.map(row)];
  const widths = rows[0].map((_, column) => Math.max(...rows.map((cells) => cells[column].length)));
  const line = (cells: string[]) =>
    cells.map((cell, column) => (column ? cell.padStart(widths[column]) : cell.padEnd(widths[0]))).join("  ");
  return `${rows.map(line).join("\n")}\n(${sink.length} outcomes kept)`;
}
