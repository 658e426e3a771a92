import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { GROUNDS, WORKS, type Work } from "../../src/calc/sources";
import { workText } from "../../src/evaluation/register/sourceText";

const SRC = join(import.meta.dirname, "..", "..", "src");
const LIST = join("calc", "sources.ts");

const files = readdirSync(SRC, { recursive: true, encoding: "utf8" })
  .filter((path) => /\.tsx?$/.test(path) && path !== LIST)
  .map((path) => ({ path, text: readFileSync(join(SRC, path), "utf8") }));
const FUNCTION_FILES = new Set(files.map(({ path }) => basename(path, ".ts")));
const WORK_KEYS = Object.keys(WORKS);
const works = Object.values<Work>(WORKS);

/** Comments with their lines joined; an empty line or a tag ends a paragraph. */
function paragraphs(text: string): string[] {
  const comments = text.match(/\/\*\*[\s\S]*?\*\//g) ?? [];
  return comments
    .flatMap((comment) =>
      comment
        .replace(/^\/\*\*|\*\/$/g, "")
        .replace(/^\s*\* ?/gm, "")
        .split(/\n\s*\n|\n(?=@)/),
    )
    .map((paragraph) => paragraph.replace(/\s+/g, " ").trim());
}

/** What stands after “Source:”, part by part. */
function sourcesIn(text: string): string[] {
  return paragraphs(text).flatMap((paragraph) => {
    const [, ...stated] = paragraph.split(/\bSources?: ?/);
    return stated.flatMap((each) => each.split(/; ?/));
  });
}

const stated = files.flatMap(({ path, text }) => sourcesIn(text).map((source) => ({ path, source })));

function isKnown(source: string): boolean {
  const [key] = source.split(/[^A-Za-z0-9]/);
  const [, name] = /^as in `(\w+)`/.exec(source) ?? [];
  const ground = Object.values(GROUNDS).some((words) => new RegExp(`^${words}\\b`).test(source));
  return WORK_KEYS.includes(key) || ground || (name !== undefined && FUNCTION_FILES.has(name));
}

describe("the sources that docstrings state", () => {
  it("are found", () => {
    expect(stated.filter(({ path }) => path.startsWith("calc")).length).toBeGreaterThan(80);
  });

  it("begin with the key of a work, a plain ground or the function that states it", () => {
    expect(stated.filter(({ source }) => !isKnown(source))).toEqual([]);
  });

  it("are told from what is none", () => {
    for (const wrong of [
      "grover",
      "Grover (1946), ch. 1",
      "grover1947, ch. 1",
      "as in `nowhere`",
      "definitions",
    ])
      expect(isKnown(wrong), wrong).toBe(false);
    expect(sourcesIn("/**\n * A; b.\n * Source: one, in\n * two; three.\n * @param a none\n */")).toEqual([
      "one, in two",
      "three.",
    ]);
  });
});

describe("the list of works", () => {
  it("stands in the order of its keys", () => {
    expect(WORK_KEYS).toEqual([...WORK_KEYS].sort());
  });

  it("names each work once, by author or title", () => {
    expect(new Set(works.map(workText)).size).toBe(works.length);
    expect(works.filter(({ authors, title }) => !authors && !title)).toEqual([]);
  });

  it("holds no work and no ground that nothing refers to", () => {
    const docs = stated.map(({ source }) => source.split(/[^A-Za-z0-9]/)[0]);
    const cited = files.flatMap(({ text }) => [...text.matchAll(/\b(?:cite|plain)\(\s*"(\w+)"/g)]);
    const used = new Set([...docs, ...cited.map(([, key]) => key)]);
    expect([...WORK_KEYS, ...Object.keys(GROUNDS)].filter((key) => !used.has(key))).toEqual([]);
  });

  it("is the one place where a work with authors is spelled out", () => {
    const spelled = works
      .flatMap(({ authors, title = "" }) => (authors ? [...authors.split(", "), title] : []))
      .filter((name) => name.includes(" "));
    const elsewhere = files.flatMap(({ path, text }) =>
      spelled.filter((name) => text.includes(name)).map((name) => `${path}: ${name}`),
    );
    expect(spelled.length).toBeGreaterThan(40);
    expect(elsewhere).toEqual([]);
  });
});
