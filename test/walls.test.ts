import { describe, expect, it } from "vitest";
import { layerOf, type SourceFile, sourceFiles } from "./sources";

const GROUND = ["calc", "fields", "units"];
const EVALUATED = ["design", "evaluation", ...GROUND];
const SHOWN = ["workbench", "ui", ...EVALUATED];
const PICTURED = ["drawing", "charts", ...SHOWN];

/** What each folder of src may import, itself aside. Imports run one way. */
const MAY_IMPORT: Record<string, string[]> = {
  units: [],
  fields: ["units"],
  calc: ["fields"],
  ui: ["units"],
  design: GROUND,
  evaluation: ["design", ...GROUND],
  workbench: EVALUATED,
  drawing: SHOWN,
  charts: SHOWN,
  panels: PICTURED,
  sheet: PICTURED,
  app: ["panels", "sheet", ...PICTURED],
  door: EVALUATED,
};

const SCREEN_PACKAGES = /^(react|react-dom|recharts|zustand|zundo|zod|comlink)(\/|$)/;

const files = sourceFiles();

function trespasses(file: SourceFile): string[] {
  const own = layerOf(file.path);
  const allowed = [own, ...(MAY_IMPORT[own] ?? [])];
  return file.imports
    .filter((target) => !allowed.includes(layerOf(target)))
    .map((target) => `${file.path} imports ${target}`);
}

/** Follows the imports depth first; a file met again on the way down closes a ring. */
function rings(): string[] {
  const importsOf = new Map(files.map((file) => [file.path, file.imports]));
  const finished = new Set<string>();
  const found: string[] = [];
  function visit(path: string, way: string[]): void {
    if (way.includes(path)) found.push([...way.slice(way.indexOf(path)), path].join(" → "));
    else if (!finished.has(path)) {
      for (const next of importsOf.get(path) ?? []) visit(next, [...way, path]);
      finished.add(path);
    }
  }
  for (const path of importsOf.keys()) visit(path, []);
  return found;
}

const calc = files.filter((file) => layerOf(file.path) === "calc");

function calcFilesWith(pattern: RegExp): string[] {
  return calc.filter((file) => pattern.test(file.text)).map((file) => file.path);
}

describe("the walls between the folders of src", () => {
  it("read every file", () => {
    expect(files.length).toBeGreaterThan(50);
    expect(files.flatMap((file) => file.imports).length).toBeGreaterThan(files.length / 2);
  });

  it("know every folder", () => {
    const folders = new Set(files.map((file) => layerOf(file.path)));
    expect([...folders].filter((folder) => !(folder in MAY_IMPORT))).toEqual([]);
  });

  it("let imports run one way only", () => {
    expect(files.flatMap(trespasses)).toEqual([]);
  });

  it("hold no ring of imports", () => {
    expect(rings()).toEqual([]);
  });

  it("hold no file that only passes others on", () => {
    const passing = files.filter((file) => /(^|\/)index\.tsx?$/.test(file.path));
    expect(passing.map((file) => file.path)).toEqual([]);
  });

  it("hold every import to a file that is there", () => {
    const known = new Set(files.map((file) => file.path));
    const code = files.flatMap((file) => file.imports.map((target) => [file.path, target]));
    const missing = code.filter(([, target]) => !/\.(css|json|svg)$/.test(target) && !known.has(target));
    expect(missing).toEqual([]);
  });
});

/** Text without comments and strings: what is computed. */
function computed(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\/|\/\/.*|"(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`/g, "");
}

/** A stage composes; what is physics is a function of calc, which theory page and reference checks can call too. */
describe("the stages of the evaluation", () => {
  const stages = files.filter(
    ({ path, text }) =>
      layerOf(path) === "evaluation" &&
      (/(Stages?|evaluate|solvedCoil)\.ts$/.test(path) || /\bstage\(\s/.test(text)),
  );

  it("are found", () => {
    expect(stages.length).toBeGreaterThan(15);
  });

  it("hold no arithmetic", () => {
    // `function*` and `yield*` are no products
    const arithmetic = /\bMath\.|(?<!function|yield)\*|\//;
    expect(stages.filter(({ text }) => arithmetic.test(computed(text))).map(({ path }) => path)).toEqual([]);
  });
});

/** Everything that runs in the page's own thread, be it loaded at once or on demand. */
function pageFiles(): Set<string> {
  const usesOf = new Map(files.map((file) => [file.path, file.uses]));
  const found = new Set<string>();
  const visit = (path: string): void => {
    if (found.has(path)) return;
    found.add(path);
    for (const next of usesOf.get(path) ?? []) visit(next);
  };
  for (const entry of ["app/start.ts", "app/main.tsx"]) visit(entry);
  return found;
}

/** The page asks workers; what only they need would be loaded for nothing, and would hold up the page if it ran there. */
describe("the page", () => {
  const page = [...pageFiles()];

  it("is followed through all that it loads", () => {
    expect(page).toEqual(expect.arrayContaining(["app/App.tsx", "panels/theory/Theory.tsx"]));
  });

  it("holds no job, stage, rule or solver", () => {
    const workers =
      /Job\.ts$|Stages?\.ts$|Rules\.ts$|evaluation\/(evaluate|solvedCoil|solvable)\.ts$|^calc\/(field|linear)\//;
    expect(page.filter((path) => workers.test(path))).toEqual([]);
  });
});

describe("the calculation", () => {
  it("knows no library of the screen or of the document", () => {
    const used = calc.flatMap((file) => file.packages.filter((name) => SCREEN_PACKAGES.test(name)));
    expect(used).toEqual([]);
  });

  it("takes nothing but types from the declared fields", () => {
    const taking = calc.filter((file) => file.imports.some((target) => layerOf(target) === "fields"));
    expect(taking.map((file) => file.path)).toEqual(["calc/design-parts.ts"]);
    expect(taking[0].text).not.toMatch(/^import (?!type )/m);
  });

  it("has no clock and no chance of its own", () => {
    expect(calcFilesWith(/\bMath\.random\b|\bDate\b|\bperformance\b/)).toEqual([]);
  });
});
