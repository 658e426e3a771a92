import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { valueAt, withValueAt } from "../../src/design/changeAt";
import { fileName, parseDesign, serialiseDesign } from "../../src/design/design";
import { type DocumentKind, readDocument } from "../../src/design/document";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";
import { designJsonSchema } from "../../src/design/jsonSchema";
import { allFields, fieldAt } from "../../src/fields/allFields";
import { runs } from "../properties";

function faults(source: unknown): string[] {
  const parsed = parseDesign(source);
  return parsed.ok ? [] : parsed.faults.map((fault) => fault.message);
}

/** The first version's document, as files of that version hold it. */
const firstVersion = JSON.parse(
  readFileSync(new URL("../reference/design-version-1.json", import.meta.url), "utf8"),
);

describe("a design's file", () => {
  it("reads a document that has only the keys of the first version, and fills in the rest", () => {
    const parsed = parseDesign(firstVersion);
    expect(parsed).toMatchObject({
      ok: true,
      design: { drive: { overCurrentAction: "end burst" }, topLoad: { surfaceFactor: 1 } },
    });
  });

  it.each([pierHallLeft, pierHallRight])("comes back as it was written: $title", (design) => {
    const text = serialiseDesign(design);
    expect(parseDesign(text)).toEqual({ ok: true, design });
    const again = parseDesign(text);
    expect(again.ok && serialiseDesign(again.design)).toBe(text);
  });

  it("needs every key of the first version", () => {
    for (const field of allFields) {
      const key = field.path.split(".").pop() ?? "";
      const parent = field.path.slice(0, -key.length - 1);
      const branch = valueAt(firstVersion, parent);
      if (branch === null || typeof branch !== "object" || !(key in branch)) continue;
      const { [key]: _, ...rest } = branch as Record<string, unknown>;
      const message = faults(withValueAt(firstVersion, parent, rest))[0] ?? "";
      expect(message, field.path).toContain(key);
    }
  });

  it("refuses what it does not know, and names it", () => {
    expect(faults({ ...firstVersion, colour: "red" })).toEqual([
      "colour is not a part of this document: remove it or correct its name.",
    ]);
    expect(faults(withValueAt(firstVersion, "primary.taper", 1))[0]).toContain("primary.taper");
  });

  it.each([
    ["secondary.turns", 0, "Turns (secondary.turns) is 0: it must be above zero."],
    [
      "secondary.windingLength",
      -0.5,
      "Winding length (secondary.windingLength) is -0.5: it must be above zero.",
    ],
    [
      "secondary.windingLength",
      "long",
      'Winding length (secondary.windingLength) is "long": it takes a finite number.',
    ],
    ["tank.strings", 2.5, "Strings in parallel (tank.strings) is 2.5: it must be a whole number."],
    ["drive.bridge", "quarter", 'Bridge (drive.bridge) is "quarter": use one of "full", "half".'],
    [
      "tuningAim",
      { kind: "loud" },
      'Tuning aim (tuningAim.kind) is "loud": use one of "unloaded", "spark", "most energy".',
    ],
    [
      "topLoad.elements",
      Array(9).fill({}),
      "topLoad.elements is a list of 9 entries: it takes at most 8 entries.",
    ],
    ["drive.switch.thermal", [], "drive.switch.thermal is a list of 0 entries: it takes at least 1 entry."],
    [
      "secondary",
      { turns: [1] },
      "Former diameter (secondary.formerDiameter) is missing: add it; it takes a finite number.",
    ],
    ["room.wallConducts", "yes", 'Walls conduct (room.wallConducts) is "yes": it takes true or false.'],
    ["primary.tubeDiameter", null, "Tube diameter (primary.tubeDiameter) is null: it takes a finite number."],
  ])("says what is wrong with %s = %s", (path, value, sentence) => {
    expect(faults(withValueAt(firstVersion, path, value))[0]).toBe(sentence);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %s in any number", (value) => {
    for (const field of allFields.filter(
      (candidate) => candidate.kind === "number" && !candidate.path.includes("*"),
    )) {
      if (valueAt(pierHallLeft, field.path) === undefined) continue;
      expect(faults(withValueAt(pierHallLeft, field.path, value))[0], field.path).toContain(field.label);
    }
  });

  it("takes a tap past the end and crossing conductors as they are, for a finding to speak of", () => {
    expect(faults(withValueAt(pierHallLeft, "primary.tap", 30))).toEqual([]);
    expect(faults(withValueAt(pierHallLeft, "topLoad.elements.0.centreHeight", 0.3))).toEqual([]);
  });

  it.each([
    ["", "not-json"],
    ["{", "not-json"],
    ["[]", "not-ours"],
    ["null", "not-ours"],
    ['{"format":"something else"}', "not-ours"],
    ['{"format":"coilwright-design"}', "invalid"],
    ['{"format":"coilwright-design","version":2}', "too-new"],
  ])("tells %j as %s", (text, kind) => {
    expect(parseDesign(text)).toMatchObject({ ok: false, kind });
  });

  it("never throws, whatever is in the file", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (json) => parseDesign(json).ok === false),
      runs(300, 2),
    );
    fc.assert(
      fc.property(fc.string(), (text) => parseDesign(text).ok === false),
      runs(300, 2),
    );
  });

  it("is refused in a sentence even when it is nested without end", () => {
    const deep = `${"[".repeat(1e5)}${"]".repeat(1e5)}`;
    const message = faults(`{"format":"coilwright-design","version":1,"secondary":${deep}}`)[0];
    expect(message).toBe(
      "The file is nested 100001 levels deep; the limit is 32, and no design or show needs more: choose another file.",
    );
    const nested = Array.from({ length: 1e5 }).reduce<unknown>((inner) => [inner], null);
    expect(faults({ ...firstVersion, secondary: nested })[0]).toContain("a list of 1 entry");
  });

  it("counts a bracket within a text as text", () => {
    const notes = `${"[{".repeat(5000)}\\"`;
    expect(faults(JSON.stringify({ ...firstVersion, notes }))).toEqual([]);
  });

  it("is refused with the first 20 faults and how many more there are", () => {
    const strange = Object.fromEntries(Array.from({ length: 1000 }, (_, index) => [`key${index}`, index]));
    const found = faults({ ...firstVersion, ...strange });
    expect(found).toHaveLength(21);
    expect(found.at(-1)).toBe("980 more faults follow.");
    expect(faults({ ...firstVersion, ...strange, secondary: {} })).toHaveLength(21);
  });

  it("is refused in sentences of bounded length, however long its texts and keys are", () => {
    const long = "x".repeat(1e6);
    const found = faults(JSON.stringify({ ...firstVersion, title: long, [long]: 1 }));
    expect(found).toHaveLength(2);
    for (const message of found) expect(message.length).toBeLessThan(300);
  });

  it("is refused at once where it holds more than any document", () => {
    const list = JSON.stringify({ ...firstVersion, notes: Array(200_001).fill(0) });
    expect(faults(list)[0]).toMatch(/^The file holds about 2\d{5} values; the limit is 200000,/);
    const wrong = { ...firstVersion.topLoad, elements: Array(150_000).fill({}) };
    expect(faults({ ...firstVersion, topLoad: wrong })[0]).toContain("at most 8 entries");
  });

  it("says at which line its text breaks off, in no engine's own words", () => {
    expect(faults('{\n"format" 1}')).toEqual(["This is not JSON and cannot be read: look at its line 2."]);
    expect(faults("hello")).toEqual([
      "This is not JSON and cannot be read: it is of another kind, or was cut short.",
    ]);
  });

  it("is read behind a byte order mark", () => {
    expect(parseDesign(`\ufeff${serialiseDesign(pierHallLeft)}`)).toEqual({ ok: true, design: pierHallLeft });
  });

  it("is named after its title", () => {
    expect(fileName("Pier hall, left coil", "design")).toBe("pier-hall-left-coil.coilwright-design.json");
    expect(fileName("///", "show")).toBe("untitled.coilwright-show.json");
  });
});

describe("documents of older versions", () => {
  const kind: DocumentKind<{ format: string; version: number; steps: string[] }> = {
    format: "test-document",
    version: 3,
    schema: z.strictObject({ format: z.string(), version: z.literal(3), steps: z.array(z.string()) }),
    migrations: {
      1: ({ step, ...document }) => ({ ...document, steps: [step, "1 to 2"] }),
      2: (document) => ({ ...document, steps: [...(document.steps as string[]), "2 to 3"] }),
    },
  };

  it("go through every step up to the present one", () => {
    expect(readDocument(kind, { format: "test-document", version: 1, step: "1" })).toEqual({
      ok: true,
      value: { format: "test-document", version: 3, steps: ["1", "1 to 2", "2 to 3"] },
    });
    expect(readDocument(kind, { format: "test-document", version: 2, steps: [] })).toMatchObject({
      ok: true,
      value: { steps: ["2 to 3"] },
    });
  });

  it("are refused as invalid where a step cannot read them", () => {
    const reading = readDocument(kind, { format: "test-document", version: 2, steps: 5 });
    expect(reading).toMatchObject({ ok: false, kind: "invalid" });
  });
});

describe("the declarations of the fields", () => {
  it("have a default within the range, and help in sentences", () => {
    for (const field of allFields) {
      for (const sentence of [field.help.what, field.help.measure, field.help.typical])
        expect(sentence, field.path).toMatch(/\.$/);
      if (field.kind !== "number" || field.default === null) continue;
      expect(field.default, field.path).toBeGreaterThanOrEqual(field.range.minimum);
      expect(field.default, field.path).toBeLessThanOrEqual(field.range.maximum);
    }
  });

  it("stand once each, and are found with indices", () => {
    expect(new Set(allFields.map((field) => field.path)).size).toBe(allFields.length);
    expect(fieldAt("topLoad.elements.3.tubeDiameter")?.label).toBe("Tube diameter");
    expect(fieldAt("nowhere")).toBeNull();
  });

  it("cover every number of a design", () => {
    const paths: string[] = [];
    const walk = (value: unknown, path: string): void => {
      if (typeof value === "number" && path !== "version") paths.push(path);
      else if (value !== null && typeof value === "object") {
        for (const [key, child] of Object.entries(value)) walk(child, path ? `${path}.${key}` : key);
      }
    };
    walk(pierHallLeft, "");
    expect(paths.filter((path) => fieldAt(path)?.kind !== "number")).toEqual([]);
  });
});

describe("the published JSON Schema", () => {
  it("asks for the keys of the first version and allows no others", () => {
    expect(designJsonSchema()).toMatchObject({
      type: "object",
      additionalProperties: false,
      required: expect.arrayContaining(["secondary", "tank"]),
    });
  });
});
