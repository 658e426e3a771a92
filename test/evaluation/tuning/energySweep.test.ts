import { describe, expect, it } from "vitest";
import { type EnergyPoint, type EnergySweep, mostEnergyPoint } from "../../../src/calc/circuit/energySweep";
import { withValueAt } from "../../../src/design/changeAt";
import type { Design } from "../../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { evaluate, evaluateField } from "../../../src/evaluation/evaluate";
import { energySweep, mostEnergyTap } from "../../../src/evaluation/tuning/energySweepStage";

const at = (changes: Record<string, unknown>, design = pierHallLeft): Design =>
  Object.entries(changes).reduce((each, [path, value]) => withValueAt(each, path, value), design);

function swept(design: Design, onTimes: "all" | "own" = "own") {
  const steps = energySweep(design, onTimes);
  const progress: number[] = [];
  let step = steps.next();
  for (; !step.done; step = steps.next()) progress.push(step.value);
  return { progress, sweep: step.value };
}

function sweepOf(design: Design): EnergySweep {
  const { sweep } = swept(design);
  if (!sweep) throw new Error("The coil has no solution.");
  return sweep;
}

const whole = swept(pierHallLeft, "all");
const [left, right] = [pierHallLeft, pierHallRight].map(sweepOf);
const growing = sweepOf(at({ "spark.growth": "with the burst" }));

describe("a sweep of bursts", () => {
  it("has a row for the design's own on-time and rows up to the interrupter's longest", () => {
    const onTimes = [...new Set(whole.sweep?.points.map((point) => point.onTime))];
    expect(onTimes[0]).toBe(pierHallLeft.interrupter.onTime);
    expect(onTimes.length).toBeGreaterThanOrEqual(4);
    expect(Math.max(...onTimes)).toBe(pierHallLeft.interrupter.longestOnTime);
    for (const onTime of onTimes) {
      const taps = whole.sweep?.points.filter((point) => point.onTime === onTime).map(({ tap }) => tap) ?? [];
      expect(taps.length).toBeGreaterThanOrEqual(41);
      expect(taps).toEqual([...taps].sort((a, b) => a - b));
      expect(taps[0]).toBe(1);
      expect(taps.at(-1)).toBe(pierHallLeft.primary.turns);
    }
  });

  it("tells after each burst how far it is, rising to the whole", () => {
    expect(whole.progress.length).toBeGreaterThan(150);
    expect(whole.progress).toEqual([...whole.progress].sort((a, b) => a - b));
    expect(whole.progress.at(-1)).toBeLessThanOrEqual(1);
    expect(whole.progress.at(-1)).toBeGreaterThan(0.9);
  });

  it("is given up by asking no further", () => {
    const steps = energySweep(pierHallLeft);
    steps.next();
    steps.return(null);
    expect(steps.next().done).toBe(true);
  });

  it.each([
    ["left", left],
    ["right", right],
    ["with a growing spark", growing],
  ])("gives no spark less than nothing, and no burst no current: %s", (_, { points }) => {
    for (const { sparkEnergy, peakPrimaryCurrent } of points) {
      expect(sparkEnergy).toBeGreaterThanOrEqual(0);
      expect(peakPrimaryCurrent).toBeGreaterThan(0);
    }
  });

  it("has no point in its own row, within the pulse rating, that gives more than the best tap", () => {
    for (const { points, mostEnergyTap: tap, allowedCurrent } of [left, right, growing]) {
      const best = points.find((point) => point.tap === tap);
      const allowed = points.filter(({ peakPrimaryCurrent }) => peakPrimaryCurrent <= allowedCurrent);
      expect(best?.sparkEnergy).toBe(Math.max(...allowed.map(({ sparkEnergy }) => sparkEnergy)));
    }
  });

  it("keeps the energy of every burst as the account of the burst itself has it", () => {
    const point = left.points.find(({ tap }) => tap === left.mostEnergyTap);
    const { burst } = evaluate(at({ "primary.tap": point?.tap }));
    // the tail of a burst whose waveform is not drawn is added up in closed form, and not step by step
    expect(Math.abs((burst?.energy.spark ?? 0) / (point?.sparkEnergy ?? 1) - 1)).toBeLessThan(2e-4);
    expect(burst?.peakPrimaryCurrent).toBeCloseTo(point?.peakPrimaryCurrent ?? 0, 9);
  });

  it("never has a higher peak current, nor more energy, with a limit that ends the burst than without one", () => {
    const free = sweepOf(at({ "drive.overCurrentLimit": 1e6 }));
    // where a limit is watched steps end at other places
    const rounding = 1 + 1e-6;
    const without = new Map(free.points.map((point) => [point.tap, point]));
    for (const point of left.points) {
      const bare = without.get(point.tap);
      if (!bare) continue;
      expect(point.peakPrimaryCurrent).toBeLessThanOrEqual(bare.peakPrimaryCurrent * rounding);
      expect(point.sparkEnergy).toBeLessThanOrEqual(bare.sparkEnergy * rounding);
    }
    expect(free.points.some(({ limited }) => limited)).toBe(false);
    expect(left.points.some(({ limited }) => limited)).toBe(true);
  });

  it("has no solution where the coil has none, and no best tap without a spark or a permitted current", () => {
    expect(swept(at({ "secondary.windingLength": 0.1 })).sweep).toBeNull();
    expect(sweepOf(at({ "spark.length": 0 })).mostEnergyTap).toBeNull();
    expect(sweepOf(at({ "interrupter.onTime": 0 })).mostEnergyTap).toBeNull();
    expect(sweepOf(at({ "drive.switch.pulseCurrentRating": 5 })).mostEnergyTap).toBeNull();
  });

  it("does not ask where the tap is", () => {
    expect(sweepOf(at({ "primary.tap": 99 }))).toEqual(left);
  });
});

describe("the point with most energy", () => {
  const point = (tap: number, sparkEnergy: number, peakPrimaryCurrent: number): EnergyPoint => ({
    tap,
    onTime: 1e-4,
    sparkEnergy,
    peakPrimaryCurrent,
    limited: false,
  });

  it("is the highest peak, though a lower one stands on the way to it and a higher one is not permitted", () => {
    const points = [point(1, 2, 10), point(2, 1, 10), point(3, 3, 10), point(4, 9, 20), point(5, 0, 10)];
    expect(mostEnergyPoint(points, 15)?.tap).toBe(3);
    expect(mostEnergyPoint(points, 20)?.tap).toBe(4);
    expect(mostEnergyPoint(points, 5)).toBeNull();
    expect(mostEnergyPoint([], 5)).toBeNull();
  });
});

describe("the tuning aim “most energy”", () => {
  const aimed = at({ tuningAim: { kind: "most energy" } });

  it("is the primary's resonance at the tap with most energy, and that tap put in is tuned", () => {
    const { tuning } = evaluate(aimed);
    expect(tuning?.suggestedTap).toBeCloseTo(left.mostEnergyTap ?? 0, 6);
    const taken = evaluate(at({ "primary.tap": tuning?.suggestedTap }, aimed));
    expect(taken.tuning).toMatchObject({ tuned: true });
    expect(taken.tuning?.targetResonance).toBe(tuning?.targetResonance);
    expect(taken.primary?.resonance).toBeCloseTo(taken.tuning?.targetResonance ?? 0, 3);
  });

  it("has neither a frequency nor a tap while it is not known, and is not tuned", () => {
    expect(evaluateField(aimed).tuning).toMatchObject({
      suggestedTap: null,
      suggestedTapBand: null,
      targetResonance: null,
      detuning: null,
      tuned: false,
    });
    expect(evaluateField(aimed).tuning?.curve.length).toBeGreaterThan(20);
  });

  it("follows a measured resonance as the other aims do", () => {
    const measured = evaluateField(at({ "secondary.measuredResonance": 130e3 }, aimed), 6).tuning;
    const { tuning, secondary } = evaluateField(aimed, 6);
    expect((measured?.targetResonance ?? 0) / (tuning?.targetResonance ?? 1)).toBeCloseTo(
      130e3 / (secondary?.resonance ?? 1),
      9,
    );
  });

  it("gives a suggestion at either end of the conductor", () => {
    for (const tap of [1, pierHallLeft.primary.turns])
      expect(evaluateField(aimed, tap).tuning?.suggestedTap).toBeCloseTo(tap, 6);
  });

  it("sweeps nothing for another aim", () => {
    expect(mostEnergyTap(pierHallLeft)).toBeNull();
  });
});
