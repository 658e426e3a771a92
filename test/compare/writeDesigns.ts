/** What two states of the program are compared on: the examples, and designs anywhere in the declared ranges. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";
import { anyDesigns } from "../evaluation/anyDesigns";

const SEED = 4711;

/** Writes so many random designs and the examples into a folder, a file each. */
export function writeDesigns(folder: string, count: number): void {
  mkdirSync(folder, { recursive: true });
  const named = Object.entries({ pierHallLeft, pierHallRight });
  const random = anyDesigns(count, SEED).map((design, index) => [`random-${index}`, design] as const);
  for (const [name, design] of [...named, ...random])
    writeFileSync(join(folder, `${name}.json`), JSON.stringify(design));
}
