/** Designs anywhere in the declared ranges, and pairs of values far outside them: nothing throws, nothing is not finite. */
import { withValueAt } from "../../../src/design/changeAt";
import { type Design, parseDesign } from "../../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { allFields } from "../../../src/design/fields";
import { evaluate } from "../../../src/evaluation/evaluate";
import type { Finding } from "../../../src/evaluation/finding";
import { isFiniteThroughout } from "../../../src/workbench/finiteGroups";
import { anyDesigns } from "../../evaluation/anyDesigns";
import type { RowResult, TortureRow } from "../row";
import { newRandom, type Random } from "../support/random";

interface Tried {
  what: string;
  design: Design;
}

/** ms */
function timed(work: () => void): number {
  const began = performance.now();
  work();
  return performance.now() - began;
}

function changed(index: number): Design {
  return withValueAt(pierHallLeft, "secondary.windingLength", 0.56 + 1e-6 * index);
}

/** ms that the example takes, nothing remembered: the median of some. */
function exampleCost(): number {
  const costs = Array.from({ length: 21 }, (_, index) => timed(() => evaluate(changed(index + 1))));
  return costs.sort((a, b) => a - b)[10];
}

/** ms; what may be too dear is judged by the bench, on a quiet machine */
let exampleMs = 0;

/** Whether a group is missing without a word; a coil may well have no top load. */
function isSilent(design: Design, groups: object, findings: readonly Finding[]): boolean {
  const bare = design.topLoad.elements.length === 0;
  const missing = Object.entries(groups).filter(
    ([name, group]) => group === null && !(bare && name === "topLoad"),
  );
  return missing.length > 0 && findings.every(({ severity }) => severity !== "error");
}

function wrongWith({ what, design }: Tried): { wrong: string | null; ratio: number } {
  try {
    const ratio = timed(() => evaluate(design)) / exampleMs;
    const { findings, ...groups } = evaluate(design);
    if (!isFiniteThroughout(groups)) return { wrong: `${what}: a result is not finite`, ratio };
    if (findings.some(({ code }) => code === "result-not-finite"))
      return { wrong: `${what}: a result had to be taken out`, ratio };
    if (isSilent(design, groups, findings))
      return { wrong: `${what}: a group is missing and no finding says why`, ratio };
    return { wrong: null, ratio };
  } catch (error) {
    return { wrong: `${what}: ${error}`, ratio: 0 };
  }
}

async function tryAll(list: Iterable<Tried>): Promise<RowResult> {
  exampleMs = exampleCost();
  const losses: string[] = [];
  let [tried, worst] = [0, 0];
  for (const each of list) {
    tried++;
    const { wrong, ratio } = wrongWith(each);
    worst = Math.max(worst, ratio);
    if (wrong !== null) losses.push(wrong);
  }
  return {
    tried,
    lost: losses.length,
    worst: `dearest ${worst.toFixed(1)} times the example's ${exampleMs.toFixed(1)} ms`,
    losses: losses.slice(0, 40),
  };
}

export const randomDesigns: TortureRow = {
  name: "designs anywhere in their ranges",
  full: 2000,
  short: 4,
  run: (tries, seed) =>
    tryAll(anyDesigns(tries, seed).map((design, index) => ({ what: `design ${index}`, design }))),
};

const EXTREMES = [0, 1e-300, -1e-300, 1e-30, -1e-30, -1, 1e9, 1e30, 1e300];

const PATHS = allFields.flatMap((field) =>
  field.kind === "number" ? [field.path.replaceAll("*", "0")] : [],
);

/** One or two fields of an example at an extreme; what the schema refuses is not a design. */
function extreme(random: Random, index: number): Tried {
  const paths =
    index < PATHS.length * EXTREMES.length
      ? [PATHS[Math.floor(index / EXTREMES.length)]]
      : [random.pick(PATHS), random.pick(PATHS)];
  const values = paths.map(() =>
    paths.length === 1 ? EXTREMES[index % EXTREMES.length] : random.pick(EXTREMES),
  );
  const start = random.pick([pierHallLeft, pierHallRight]);
  let design = start;
  for (const [place, path] of paths.entries()) {
    const next = placed(design, path, values[place]);
    if (next !== null && parseDesign(next).ok) design = next;
  }
  return { what: paths.map((path, place) => `${path} = ${values[place]}`).join(", "), design };
}

/** Null where the part that the path leads into is absent. */
function placed(design: Design, path: string, value: number): Design | null {
  try {
    return withValueAt(design, path, value);
  } catch {
    return null;
  }
}

export const extremes: TortureRow = {
  name: "fields and pairs of fields at extremes",
  full: 4000,
  short: 12,
  run: (tries, seed) => {
    const random = newRandom(seed);
    return tryAll(Array.from({ length: tries }, (_, index) => extreme(random, index)));
  },
};
