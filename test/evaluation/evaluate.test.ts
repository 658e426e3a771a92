import { describe, expect, it } from "vitest";
import { withValueAt } from "../../src/design/changeAt";
import type { Design } from "../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";
import { evaluate } from "../../src/evaluation/evaluate";
import unused from "../reference/primary-unused-turns.json";

const at = (changes: Record<string, unknown>): Design =>
  Object.entries(changes).reduce((design, [path, value]) => withValueAt(design, path, value), pierHallLeft);

function numbers(value: unknown, path = ""): [string, number][] {
  if (typeof value === "number") return [[path, value]];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, child]) => numbers(child, path ? `${path}.${key}` : key));
}

describe("the evaluation of the example", () => {
  const evaluation = evaluate(at({ "primary.tap": 6 }));
  const reference = unused.other_values_of_the_example;
  const { secondary, topLoad, coupling } = evaluation;

  // reference/primary-unused-turns.json: Ritz solve and flux-function integral equation, 5e-3
  it.each([
    ["secondary.inductance", secondary?.inductance, reference["secondary.inductance"]],
    ["secondary.resonance", secondary?.resonance, reference["secondary.resonance_Hz"]],
    ["secondary.bareResonance", secondary?.bareResonance, reference["secondary.bareResonance_Hz"]],
    ["effective capacitance", secondary?.effectiveCapacitance, reference.effectiveCapacitance_F],
    ["effective inductance", secondary?.effectiveInductance, reference.effectiveInductance_H],
    ["surface field per volt", topLoad?.surfaceFieldPerVolt, reference.surfaceFieldPerVolt_per_m],
    ["k, uniform current, tap 6", coupling?.uniformCurrent, reference.k_uniform_at_tap_6],
    ["k at resonance, tap 6", coupling?.atResonance, reference.k_at_resonance_at_tap_6],
  ])("meets the reference within half a per cent: %s", (_, value, expected) => {
    expect(Math.abs((value ?? 0) / expected - 1)).toBeLessThan(5e-3);
  });
});

describe("the tuning", () => {
  it.each(["unloaded", "spark"])("reports the suggested tap as tuned when it is put in, aim %s", (kind) => {
    const aim = kind === "spark" ? { kind, length: 0.7 } : { kind };
    const tap = evaluate(at({ tuningAim: aim })).tuning?.suggestedTap ?? 0;
    expect(evaluate(at({ tuningAim: aim, "primary.tap": tap })).tuning).toMatchObject({ tuned: true });
  });

  it("follows a measured resonance where there is one", () => {
    const free = evaluate(pierHallLeft).tuning;
    const measured = evaluate(at({ "secondary.measuredResonance": 136e3 })).tuning;
    expect(measured?.suggestedTap).toBeGreaterThan(free?.suggestedTap ?? 99);
  });

  it("has no suggested tap where no turn reaches the aim, and says so", () => {
    const evaluation = evaluate(at({ "tank.strings": 1, "tank.unitsInSeries": 30 }));
    expect(evaluation.tuning?.suggestedTap).toBeNull();
    expect(evaluation.findings.map((finding) => finding.code)).toContain("aim-out-of-reach");
  });
});

describe("designs that cannot be solved", () => {
  it.each<[string, Record<string, unknown>]>([
    [
      "a toroid that cuts the winding",
      { "topLoad.elements.0.tubeDiameter": 0.228, "topLoad.elements.0.centreHeight": 0.4 },
    ],
    ["a tap past the end", { "primary.tap": 9 }],
    ["a winding shorter than its turns", { "secondary.windingLength": 0.1 }],
    ["a tube thicker than the pitch", { "primary.tubeDiameter": 0.02 }],
    ["a primary inside the former", { "primary.innerRadius": 0.03, "primary.baseHeight": 0.2 }],
    ["a rail in the primary", { "primary.strikeRail.height": 0.1, "primary.strikeRail.radius": 0.2 }],
    ["a primary that reaches the axis", { "primary.inclinationDegrees": 150 }],
    ["a base in the ground plane", { "secondary.baseHeight": 0 }],
    ["a primary in the ground", { "primary.baseHeight": 0.001 }],
    ["a hundred thousand turns of primary", { "primary.turns": 1e5 }],
    ["a toroid with no hole", { "topLoad.elements.0.tubeDiameter": 0.3 }],
    ["a quarter turn of primary", { "primary.turns": 0.25, "primary.tap": 0.2 }],
    ["a winding of one turn", { "secondary.turns": 1 }],
    ["a winding of a nanometre", { "secondary.windingLength": 1e-9 }],
    ["a coil the size of a planet", { "secondary.formerDiameter": 1e7 }],
  ])("get an error finding and no number that is none: %s", (_, changes) => {
    const evaluation = evaluate(at(changes));
    const severities = evaluation.findings.map((finding) => finding.severity);
    expect(severities.includes("error") || severities.includes("warning")).toBe(true);
    expect(numbers(evaluation).filter(([, value]) => !Number.isFinite(value))).toEqual([]);
  });

  it("leave the groups that do not depend on the fault", () => {
    const evaluation = evaluate(at({ "primary.tap": 9 }));
    expect(evaluation.primary).toBeNull();
    expect(evaluation.secondary?.resonance).toBeGreaterThan(1e5);
    expect(evaluation.tuning?.suggestedTap).toBeGreaterThan(5);
    expect(evaluation.drive).toMatchObject({ averagePower: null, junctionTemperature: null });
    expect(evaluation.drive?.dischargeTime).toBeGreaterThan(100);
    expect(evaluation.findings.map(({ code }) => code)).toContain("reservoir-discharges-slowly");
  });
});

describe("the corrections", () => {
  it.each([
    ["former", -0.0014, -0.0004],
    ["floorConducts", 0.0005, 0.004],
    ["wireCurrent", 0.0001, 0.0006],
  ])("change the resonance a little, in their own direction: %s", (name, low, high) => {
    // reference/method-notes.md: former −0.06 … −0.14 %, floor +0.2 … +0.33 %, wire +0.03 … +0.05 %, for other coils
    const shift =
      (evaluate(at({ [`corrections.${name}`]: true })).secondary?.resonance ?? 0) /
        (evaluate(pierHallLeft).secondary?.resonance ?? 1) -
      1;
    expect(shift).toBeGreaterThan(low);
    expect(shift).toBeLessThan(high);
  });

  it("with a measured Q, take it for the computed one", () => {
    expect(evaluate(at({ "secondary.measuredQ": 120 })).secondary?.qualityFactor).toBe(120);
  });
});

describe("a bare winding", () => {
  it("is a valid coil: its resonance is the bare one", () => {
    const { secondary, topLoad, findings } = evaluate(at({ "topLoad.elements": [] }));
    expect(topLoad).toBeNull();
    expect(secondary?.resonance).toBe(secondary?.bareResonance);
    expect(findings.filter((finding) => finding.severity === "error")).toEqual([]);
  });
});

it("evaluates the right coil of the pair as tuned, near the left one's frequency", () => {
  const [left, right] = [evaluate(pierHallLeft), evaluate(pierHallRight)];
  expect(right.tuning?.tuned).toBe(true);
  expect(Math.abs((right.secondary?.resonance ?? 0) / (left.secondary?.resonance ?? 1) - 1)).toBeLessThan(
    0.02,
  );
});
