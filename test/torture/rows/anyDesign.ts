/** Designs anywhere in the declared ranges, and pairs of values far outside them: nothing throws, nothing is not finite. */
import { withValueAt } from "../../../src/design/changeAt";
import { type Design, parseDesign } from "../../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { evaluate } from "../../../src/evaluation/evaluate";
import type { Finding } from "../../../src/evaluation/findings/finding";
import { allFields } from "../../../src/fields/allFields";
import { isFiniteThroughout } from "../../../src/workbench/background/finiteGroups";
import { anyDesigns } from "../../evaluation/anyDesigns";
import type { RowResult, TortureRow } from "../row";
import { newRandom, type Random } from "../support/random";
import { runTrials } from "../support/trials";

/** ms; a worker that takes longer is ended */
const LONGEST = 10_000;

interface Tried {
  what: string;
  design: Design;
}

/** Whether a group is missing without a word; a coil may well have no top load. */
function isSilent(design: Design, groups: object, findings: readonly Finding[]): boolean {
  const bare = design.topLoad.elements.length === 0;
  const missing = Object.entries(groups).filter(
    ([name, group]) => group === null && !(bare && name === "topLoad"),
  );
  return missing.length > 0 && findings.every(({ severity }) => severity !== "error");
}

/** What is wrong with a design's results, null where nothing is. */
function wrongWith({ what, design }: Tried): string | null {
  const { findings, ...groups } = evaluate(design);
  if (!isFiniteThroughout(groups)) return `${what}: a result is not finite`;
  if (findings.some(({ code }) => code === "result-not-finite"))
    return `${what}: a result had to be taken out`;
  if (isSilent(design, groups, findings)) return `${what}: a group is missing and no finding says why`;
  return null;
}

/** What a design may cost is judged by the bench, on a quiet machine. */
function tryAll(list: readonly Tried[]): RowResult {
  return runTrials(list.length, LONGEST, (index) => {
    const { what } = list[index];
    return { tried: what, wrong: wrongWith(list[index]) ?? "" };
  });
}

export const randomDesigns: TortureRow = {
  name: "designs anywhere in their ranges",
  full: 2000,
  short: 2,
  run: async (tries, seed) =>
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
  short: 3,
  run: async (tries, seed) => {
    const random = newRandom(seed);
    return tryAll(Array.from({ length: tries }, (_, index) => extreme(random, index)));
  },
};
