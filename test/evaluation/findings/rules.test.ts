import { describe, expect, it } from "vitest";
import { withValueAt } from "../../../src/design/changeAt";
import type { Design } from "../../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { evaluate } from "../../../src/evaluation/evaluate";
import { findingMessage } from "../../../src/evaluation/findings/findingMessage";
import { RULES } from "../../../src/evaluation/findings/rules";

function changed(changes: Record<string, unknown>): Design {
  return Object.entries(changes).reduce(
    (design, [path, value]) => withValueAt(design, path, value),
    pierHallLeft,
  );
}

function codes(design: Design): string[] {
  return evaluate(design).findings.map((finding) => finding.code);
}

function sentence(design: Design, code: string): string {
  const finding = evaluate(design).findings.find((candidate) => candidate.code === code);
  return finding ? findingMessage(finding, "metric").replaceAll("\u202f", " ") : "";
}

describe("the rules", () => {
  it("have a code each, never two the same", () => {
    expect(new Set(RULES.map((rule) => rule.code)).size).toBe(RULES.length);
    for (const rule of RULES) expect(rule.code).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it.each([pierHallLeft, pierHallRight])("find no error and no warning in the example: $title", (design) => {
    expect(evaluate(design).findings.filter((finding) => finding.severity !== "note")).toEqual([]);
  });

  it.each<[string, Record<string, unknown>, string]>([
    [
      "winding-shorter-than-its-turns",
      { "secondary.windingLength": 0.5 },
      "Winding length of 500.0 mm is shorter than its turns side by side, which need 549.1 mm.",
    ],
    [
      "toroid-without-hole",
      { "topLoad.elements.0.outerDiameter": 0.1 },
      "Outer diameter of 100.0 mm is not more than twice the tube diameter, 220.0 mm: the toroid has no hole, so the field cannot be solved. Widen it",
    ],
    [
      "overall-diameter-below-conductor",
      { "secondary.wire.overallDiameter": 0.0003 },
      "Overall diameter of 0.3000 mm is below the bare conductor's 0.3350 mm.",
    ],
    [
      "tap-past-end",
      { "primary.tap": 9 },
      "Tap at 9.000 turns lies past the end of the primary, which has 8.000 turns.",
    ],
    [
      "primary-turns-touch",
      { "primary.tubeDiameter": 0.015 },
      "Tube diameter of 15.00 mm is not smaller than the pitch of 14.50 mm: neighbouring turns touch.",
    ],
    [
      "wall-thicker-than-tube",
      { "primary.wallThickness": 0.006 },
      "Wall thickness of 6.000 mm is more than half the tube diameter, 4.750 mm.",
    ],
    [
      "primary-inside-former",
      { "primary.innerRadius": 0.05 },
      "Inner radius of 50.00 mm puts the primary's conductor inside the secondary; it must be larger than 67.62 mm.",
    ],
    [
      "primary-turns-all-but-touch",
      { "primary.pitch": 0.0096 },
      "Pitch of 9.600 mm leaves too little air between this many turns: current crowding cannot be computed below 9.728 mm.",
    ],
    [
      "former-wall-thicker-than-radius",
      { "secondary.formerWall": 0.0626 },
      "Former wall of 62.60 mm is more than the former's radius, 62.50 mm, which is used instead.",
    ],
    [
      "on-time-beyond-what-is-followed",
      { "interrupter.onTime": 2.1e-3 },
      "On-time of 2.100 ms covers more cycles than can be simulated; the longest for this coil is 2.060 ms.",
    ],
    [
      "circuit-does-not-ring",
      { "spark.topology": "parallel", "spark.resistance": 10e3 },
      "With the resistance at 10.00 kΩ, a circuit is damped so heavily that it does not ring",
    ],
    [
      "conductor-close-to-winding",
      { "topLoad.elements.0.outerDiameter": 0.354, "topLoad.elements.0.centreHeight": 0.6 },
      "this conductor leaves 4.314 mm of air to the winding; below 5.600 mm it flashes over",
    ],
    [
      "below-usual-range",
      { "air.pressure": 20000 },
      "Air pressure of 200.0 hPa is outside the range this model is meant for, which begins at 500.0 hPa.",
    ],
    [
      "above-usual-range",
      { "interrupter.dutyLimit": 0.9 },
      "Duty limit of 90.00 % is outside the range this model is meant for, which ends at 50.00 %.",
    ],
  ])("say what %s means", (code, changes, expected) => {
    expect(codes(pierHallLeft)).not.toContain(code);
    expect(sentence(changed(changes), code)).toContain(expected);
  });
});

describe("rules with a threshold of their own", () => {
  const { coupling, secondary } = evaluate(pierHallLeft);

  it("warn of a coupling above a fifth, common practice, and of none below it", () => {
    const at = (height: number) =>
      evaluate(changed({ "primary.baseHeight": height, "secondary.baseHeight": 0.1 }));
    const sides = [0.1, 0.15, 0.2, 0.25, 0.3].map(at).map((each) => ({
      coupling: each.coupling?.circuit ?? 0,
      warned: each.findings.some(({ code }) => code === "coupling-high"),
    }));
    expect(Math.max(...sides.map((each) => each.coupling))).toBeGreaterThan(0.2);
    expect(Math.max(...sides.map((each) => each.coupling))).toBeLessThan(0.45);
    expect(coupling?.circuit).toBeLessThan(0.2);
    for (const each of sides) expect(each.warned, `${each.coupling}`).toBe(each.coupling > 0.2);
  });

  it.each([
    [1.029, false],
    [1.031, true],
    [0.971, false],
    [0.969, true],
  ])("note a measured resonance from three hundredths off: %f of the computed", (part, noted) => {
    const measured = (secondary?.resonance ?? 0) * part;
    const found = codes(changed({ "secondary.measuredResonance": measured }));
    expect(found.includes("measured-resonance-differs")).toBe(noted);
  });
});
