import { describe, expect, it } from "vitest";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { evaluate, evaluateField } from "../../../src/evaluation/evaluate";
import { PAIR_RESULTS } from "../../../src/evaluation/pair/pairRegister";
import type { PairResult } from "../../../src/evaluation/pair/pairResults";
import { pairResult } from "../../../src/evaluation/pair/pairStage";
import { resultValue } from "../../../src/evaluation/register/register";

function pairAt(spacing: number, phase: "in phase" | "opposed" = "in phase"): PairResult {
  const outcome = pairResult(pierHallLeft, pierHallRight, spacing, phase);
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.pair;
}

describe("two coils of the pier hall", () => {
  it("split little where they stand apart, and not at all at a great distance", () => {
    const { coupling, split, left, right } = pairAt(3);
    expect(Math.abs(coupling.capacitive)).toBeLessThan(0.01);
    expect(Math.abs(split.inPhase - split.opposed)).toBeGreaterThan(0);
    expect(left.resonanceBeside).not.toBe(left.resonance);
    const far = pairAt(1000);
    expect(far.left.resonanceBeside / far.left.resonance).toBeCloseTo(1, 9);
    expect(far.right.retunedTap).toBeCloseTo(far.right.suggestedTap ?? 0, 6);
    expect(right.breakoutVoltage).toBeGreaterThan(0);
  });

  it("in phase each resonates higher, opposed lower, by nearly the same", () => {
    const [inPhase, opposed] = [pairAt(1.5), pairAt(1.5, "opposed")];
    const shift = (pair: PairResult) => pair.left.resonanceBeside / pair.left.resonance - 1;
    expect(shift(inPhase)).toBeGreaterThan(0);
    expect(shift(opposed) / shift(inPhase)).toBeCloseTo(-1, 1);
    expect(inPhase.left.retunedTap).toBeLessThan(inPhase.left.suggestedTap ?? 0);
  });

  it("stand at the sum of their voltages opposed and at the difference in phase", () => {
    const { left, right, voltageBetween, gap, meanField } = pairAt(2, "opposed");
    expect(voltageBetween).toBeCloseTo(left.topVoltage + right.topVoltage, 6);
    expect(meanField).toBeCloseTo(voltageBetween / gap, 6);
    expect(pairAt(2).voltageBetween).toBeLessThan(0.5 * voltageBetween);
  });

  it("are the same from either side", () => {
    const there = pairAt(1);
    const back = pairResult(pierHallRight, pierHallLeft, 1, "in phase");
    if (!back.ok) throw new Error(back.message);
    expect(back.pair.split.inPhase / there.split.inPhase).toBeCloseTo(1, 9);
    expect(back.pair.left.resonanceBeside / there.right.resonanceBeside).toBeCloseTo(1, 9);
  });

  it("break out at their points, where they have one", () => {
    const { topLoad } = evaluateField(pierHallLeft);
    expect(pairAt(2).left.breakoutVoltage).toBe(topLoad?.breakoutVoltageAtPoint?.typical);
    const bare = { ...pierHallLeft, topLoad: { ...pierHallLeft.topLoad, breakoutPoint: null } };
    const outcome = pairResult(bare, pierHallRight, 2, "in phase");
    expect(outcome.ok && outcome.pair.left.breakoutVoltage).toBeCloseTo(topLoad?.breakoutVoltage ?? 0, 3);
  });

  it("say where what is induced is only an upper bound", () => {
    const bounds = [1, 2, 3].map((spacing) => pairAt(spacing).left.induced?.bound);
    expect(bounds).toEqual([true, true, false]);
  });

  it("induce less in each other the farther they stand apart, and nothing at a great distance", () => {
    const voltages = [1, 2, 4, 8, 500].map((spacing) => pairAt(spacing).left.induced?.voltage ?? Number.NaN);
    for (let index = 1; index < voltages.length; index++)
      expect(voltages[index]).toBeLessThan(voltages[index - 1]);
    expect(voltages[4]).toBeLessThan(1e-4 * voltages[0]);
  });

  it("induce of their top voltage no more than the beat of their coupling can pass within the burst", () => {
    const { coupling, left, right } = pairAt(2);
    const burst = evaluate(pierHallRight).burst;
    const cycles = right.resonance * (burst?.waveform.time.at(-1) ?? 0);
    const most = Math.PI * cycles * (Math.abs(coupling.capacitive) + Math.abs(coupling.magnetic));
    const part = (left.induced?.voltage ?? 0) / (burst?.peakTopVoltage ?? 1);
    expect(part).toBeGreaterThan(0.02 * most);
    // the coils' capacitances and resonances differ by some per cent
    expect(part).toBeLessThan(1.3 * most);
  });

  it("have every registered result, each a number", () => {
    const pair = pairAt(2);
    for (const { id } of PAIR_RESULTS) expect(resultValue({ pair }, id), id).not.toBeNull();
    expect(new Set(PAIR_RESULTS.map(({ id }) => id)).size).toBe(PAIR_RESULTS.length);
  });

  it("are refused with a sentence where they stand in each other or have no top load", () => {
    const close = pairResult(pierHallLeft, pierHallRight, 0.3, "in phase");
    expect(close.ok ? "" : close.message).toMatch(/0\.3 m .* set it above/);
    const bare = { ...pierHallRight, topLoad: { ...pierHallRight.topLoad, elements: [] } };
    const open = pairResult(pierHallLeft, bare, 3, "in phase");
    expect(open.ok ? "" : open.message).toMatch(/right coil .* top load/);
  });

  it("are refused with a sentence where they are farther apart than numbers hold", () => {
    for (const spacing of [1e9, 1e300]) {
      const far = pairResult(pierHallLeft, pierHallRight, spacing, "in phase");
      expect(far.ok ? "" : far.message).toMatch(/too far apart .* below 20 km/);
    }
  });

  it("leave nothing ringing in a coil that does not ring", () => {
    const dull = { ...pierHallLeft, secondary: { ...pierHallLeft.secondary, measuredQ: 0.4 } };
    const outcome = pairResult(dull, pierHallRight, 3, "in phase");
    expect(outcome.ok && outcome.pair.left.induced).toBeNull();
    expect(outcome.ok && outcome.pair.right.induced).not.toBeNull();
  });
});
