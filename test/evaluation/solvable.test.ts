import { describe, expect, it } from "vitest";
import { fieldValues, withValueAt } from "../../src/design/changeAt";
import { type Design, parseDesign } from "../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";
import { evaluateDrive, evaluateField } from "../../src/evaluation/evaluate";
import type { DriveEvaluation, FieldEvaluation } from "../../src/evaluation/evaluation";
import { findingMessage } from "../../src/evaluation/findings/findingMessage";
import { areSolvable, beyondSpans, solvableSpan } from "../../src/evaluation/solvable";
import { allFields, numberField } from "../../src/fields/allFields";
import { isFiniteThroughout } from "../../src/workbench/background/finiteGroups";

const EXTREMES = [0, 1e-300, 1e-30, 1e9, 1e30, 1e300];

function evaluated(design: Design): { field: FieldEvaluation; drive: DriveEvaluation } {
  const field = evaluateField(design);
  return { field, drive: evaluateDrive(design, field) };
}

/** Every number field of a design at every extreme that its document may hold. */
function extremes(start: Design): { path: string; value: number; design: Design }[] {
  return allFields.flatMap((field) =>
    field.kind === "number"
      ? fieldValues(start, field.path).flatMap(({ path }) =>
          EXTREMES.map((value) => ({ path, value, design: withValueAt(start, path, value) })),
        )
      : [],
  );
}

const tried = [pierHallLeft, pierHallRight]
  .flatMap(extremes)
  .filter(({ design }) => parseDesign(design).ok)
  // a few of each field: the whole sweep stands in the torture
  .filter((_, index) => index % 5 === 0);

describe("the span that a field can be computed with", () => {
  it("holds its declared range and its default", () => {
    for (const field of allFields) {
      if (field.kind !== "number") continue;
      const { least, most } = solvableSpan(field);
      expect(least).toBeLessThanOrEqual(field.range.minimum || 1e-12 * field.range.maximum);
      expect(most).toBeGreaterThanOrEqual(field.range.maximum);
      if (field.default) expect(field.default).toBeGreaterThan(least);
    }
  });

  it("is not passed by the examples, nor by nothing where nothing has a meaning", () => {
    expect(beyondSpans(pierHallLeft)).toEqual([]);
    expect(beyondSpans(withValueAt(pierHallRight, "spark.length", 0))).toEqual([]);
  });

  it("is judged on both sides of both ends", () => {
    const { least, most } = solvableSpan(numberField("secondary.windingLength"));
    const at = (value: number) => withValueAt(pierHallLeft, "secondary.windingLength", value);
    expect([least, most].map((value) => beyondSpans(at(value)).length)).toEqual([0, 0]);
    expect(beyondSpans(at(least * 0.999))).toMatchObject([{ path: "secondary.windingLength", limit: least }]);
    expect(beyondSpans(at(most * 1.001))).toMatchObject([{ path: "secondary.windingLength", limit: most }]);
    expect(areSolvable(at(2 * most), ["secondary"])).toBe(false);
    expect(areSolvable(at(2 * most), ["drive", "tank"])).toBe(true);
  });
});

describe("a design with a value beyond everything", () => {
  it("names field, value, limit and remedy in the reader's units", () => {
    const { drive } = evaluated(withValueAt(pierHallLeft, "secondary.windingLength", 1e30));
    const [finding] = drive.findings;
    expect(finding.code).toBe("value-beyond-what-is-solved");
    expect(findingMessage(finding, "metric").replaceAll("\u202f", " ")).toBe(
      "Winding length of 1.000 × 10³⁰ m is outside the range that can be computed, which ends at 6000 m; results that depend on it are left out. Check the value and its unit.",
    );
    expect(drive.findings.map(({ code }) => code)).not.toContain("above-usual-range");
  });

  it("says of a value that is too small where the computation begins", () => {
    const { drive } = evaluated(withValueAt(pierHallLeft, "secondary.turns", 1e-30));
    const finding = drive.findings.find(({ where }) => where === "secondary.turns")!;
    expect(findingMessage(finding, "metric")).toContain("which begins at");
  });

  it.each(["tank.unitsInSeries", "tank.strings", "drive.switch.parallelDevices"])(
    "is judged by the computation, not refused as broken, where whole numbers are counted: %s",
    (path) => {
      const design = withValueAt(pierHallLeft, path, 1e30);
      expect(parseDesign(design).ok).toBe(true);
      expect(parseDesign(withValueAt(pierHallLeft, path, 2.5)).ok).toBe(false);
      const { drive } = evaluated(design);
      expect(drive.findings[0]).toMatchObject({ where: path, code: "value-beyond-what-is-solved" });
    },
  );

  it.each([
    ["secondary.turns", 1e-30, "secondary"],
    ["tank.unit.dissipationFactor", 1e30, "primary"],
  ] as const)("leaves out what depends on it: %s of %d", (path, value, group) => {
    const { field, drive } = evaluated(withValueAt(pierHallLeft, path, value));
    expect(field[group]).toBeNull();
    expect(drive.burst).toBeNull();
    expect(drive.findings).toContainEqual(
      expect.objectContaining({ severity: "error", where: path, value, code: "value-beyond-what-is-solved" }),
    );
  });

  it("keeps what does not depend on it", () => {
    const { field, drive } = evaluated(withValueAt(pierHallLeft, "drive.reservoirCapacitance", 1e300));
    expect(field.secondary).not.toBeNull();
    expect(drive.response).not.toBeNull();
    expect(drive.drive).toBeNull();
  });

  it.each(tried)(
    "gives no figure that is not finite, and a finding: $path = $value",
    ({ path, value, design }) => {
      const { field, drive } = evaluated(design);
      const { findings, ...groups } = drive;
      expect(isFiniteThroughout(field)).toBe(true);
      expect(isFiniteThroughout(groups)).toBe(true);
      if (value > 0) expect(findings.map(({ where }) => where)).toContain(path);
      for (const finding of findings) {
        const text = findingMessage(finding, "inch");
        expect(text).not.toMatch(/NaN|Infinity|undefined|\d{17}/);
        expect(text.length).toBeLessThan(320);
      }
    },
  );
});
