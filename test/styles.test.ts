import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { sourceFiles } from "./sources";

const SRC = join(import.meta.dirname, "..", "src");

/** Classes that a file takes from its style sheets by name. */
function missingClasses({ path, text }: { path: string; text: string }): string[] {
  return [...text.matchAll(/import (\w+) from "([^"]+\.module\.css)"/g)].flatMap(([, name, sheet]) => {
    const styles = readFileSync(join(SRC, path, "..", sheet), "utf8");
    const known = new Set([...styles.matchAll(/\.([A-Za-z_][\w-]*)/g)].map((match) => match[1]));
    const used = [...text.matchAll(new RegExp(`\\b${name}\\.(\\w+)`, "g"))].map((match) => match[1]);
    return used.filter((each) => !known.has(each)).map((each) => `${path}: .${each} is not in ${sheet}`);
  });
}

it("every class that a part of the screen names stands in its style sheet", () => {
  const files = sourceFiles();
  expect(files.filter(({ text }) => text.includes(".module.css")).length).toBeGreaterThan(50);
  expect(files.flatMap(missingClasses)).toEqual([]);
});
