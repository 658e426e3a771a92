import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { repeatedRise } from "../../../src/calc/circuit/foster";
import type { Interrupter } from "../../../src/calc/design-parts";
import { longestWithin, valueAt } from "../../../src/calc/music/burstCost";
import { coilLimits } from "../../../src/calc/music/coilLimits";
import { meanWindow } from "../../../src/calc/music/coilLoad";
import { keyFrequency } from "../../../src/calc/music/equalTemperament";
import { heatStep, JunctionTrack, repeatedRisePerHeat } from "../../../src/calc/music/junctionTrack";
import { LiveGate } from "../../../src/calc/music/liveGate";
import { dutyOnTime, gapOnTime, noteLimits, rateLimit } from "../../../src/calc/music/noteLimits";
import { toneReading } from "../../../src/calc/music/toneReading";
import { runs } from "../../properties";
import { coilLoads } from "./coilLoads";
import { uniform } from "./uniform";

const INTERRUPTER: Interrupter = {
  onTime: 100e-6,
  repetitionRate: 100,
  longestOnTime: 200e-6,
  shortestGap: 600e-6,
  dutyLimit: 0.05,
  dutyWindow: 0.25,
};

const interrupters = fc.record({
  onTime: fc.constant(50e-6),
  repetitionRate: fc.constant(100),
  longestOnTime: uniform(20e-6, 400e-6),
  shortestGap: uniform(1e-4, 2e-3),
  dutyLimit: uniform(0.005, 0.2),
  dutyWindow: uniform(0.01, 0.5),
});
const keys = fc.integer({ min: 20, max: 100 });

describe("the limits of a lone note", () => {
  it("are the interrupter's where bursts cost nothing", () => {
    const [low] = noteLimits(INTERRUPTER, null, 31, 31);
    expect(low).toMatchObject({ key: 31, onTime: 200e-6, limitedBy: "longest on-time" });
    expect(rateLimit(700, INTERRUPTER, null).limitedBy).toBe("duty");
    expect(rateLimit(1640, INTERRUPTER, null)).toMatchObject({ limitedBy: "shortest gap" });
    expect(rateLimit(2000, INTERRUPTER, null).onTime).toBeNull();
  });

  it.each([
    [0.99e-6, null],
    [1.01e-6, 1.01e-6],
  ])("are none below the shortest pulse of a microsecond: %d s", (longestOnTime, onTime) => {
    expect(rateLimit(100, { ...INTERRUPTER, longestOnTime }, null).onTime).toBe(onTime);
    const live = new LiveGate(coilLimits({ ...INTERRUPTER, longestOnTime }, 1, null));
    live.press({ id: "a", rate: 100, onTime: longestOnTime }, 0);
    expect(live.advance(0.005).starts).toHaveLength(onTime === null ? 0 : 1);
  });

  it("leave the gap, and the duty of the worst window by hand", () => {
    expect(gapOnTime(1000, INTERRUPTER)).toBeCloseTo(400e-6, 12);
    // 0.25 s at 102 Hz: 25 whole periods and a half, so that 25 pulses before and the pulse share 12.5 ms
    expect(dutyOnTime(102, INTERRUPTER)).toBeCloseTo(0.0125 / 26, 12);
    // 0.0101 s at 98 Hz: 0.99 periods; of the pulse before, all but 104 µs reaches into the window
    const short = { ...INTERRUPTER, dutyWindow: 0.0101 };
    expect(dutyOnTime(98, short)).toBeCloseTo((0.05 * 0.0101 + 1 / 98 - 0.0101) / 2, 12);
  });

  it("sound unshortened: nothing in the gate changes a note at its limit", () => {
    fc.assert(
      fc.property(interrupters, coilLoads, keys, (interrupter, drawn, key) => {
        const load = { ...drawn, window: meanWindow(interrupter.dutyWindow) };
        const rate = keyFrequency(key);
        const { onTime } = rateLimit(rate, interrupter, load);
        if (onTime === null) return;
        const live = new LiveGate(coilLimits(interrupter, 1, load));
        // starts are whole nanoseconds, and so a pulse may come a little early against the rest
        const asked = Math.max(1e-6, onTime * (1 - 1e-4) - 4e-9);
        live.press({ id: "a", rate, onTime: asked }, 0);
        const { starts, onTimes } = live.advance(1.5);
        expect(starts.length).toBeGreaterThanOrEqual(Math.floor(1.5 * rate));
        for (const each of onTimes) expect(each).toBe(Math.floor(asked * 1e9));
      }),
      runs(200, 3),
    );
  });

  it("fall, or stay, as the rate rises, whatever the coil", () => {
    fc.assert(
      fc.property(interrupters, coilLoads, (interrupter, load) => {
        const onTimes = noteLimits(interrupter, load, 0, 130).map(({ onTime }) => onTime ?? 0);
        for (let index = 1; index < onTimes.length; index++)
          expect(onTimes[index]).toBeLessThanOrEqual(onTimes[index - 1] * (1 + 1e-12));
      }),
      runs(200),
    );
  });

  it("hold the junction that is read for the tone", () => {
    fc.assert(
      fc.property(interrupters, coilLoads, keys, (interrupter, load, key) => {
        const { rate, onTime } = rateLimit(keyFrequency(key), interrupter, load);
        if (onTime === null) return;
        const { junctionTemperature } = toneReading(rate, onTime, load);
        expect(junctionTemperature).toBeLessThanOrEqual(load.junctionLimit + 1e-6);
      }),
      runs(200),
    );
  });
});

const NETWORK = [
  { resistance: 0.004, timeConstant: 1e-4 },
  { resistance: 0.05, timeConstant: 0.018 },
  { resistance: 0.055, timeConstant: 0.19 },
];

describe("a junction from burst to burst", () => {
  const pulses = [{ duration: 150e-6, power: 300, energyAtEnd: 0.02 }];
  const energy = 300 * 150e-6 + 0.02;

  it("rises as the exact response of its Foster network does, from above and within a few per cent", () => {
    for (const rate of [20, 100, 700, 1500]) {
      const exact = repeatedRise(NETWORK, pulses, 1 / rate);
      const left = energy * repeatedRisePerHeat(NETWORK, 1 / rate, 1 / rate - 150e-6);
      const peak = left + exact.firstBurst;
      expect(peak).toBeGreaterThanOrEqual(exact.peak);
      expect(peak / exact.peak).toBeLessThan(1.06);
    }
  });

  it("comes to the closed form of the series when it is followed", () => {
    const track = new JunctionTrack(NETWORK);
    const step = heatStep(NETWORK, energy, 150e-6);
    for (let burst = 0; burst < 1000; burst++) track.heat(step, burst * 0.005);
    const settled = energy * repeatedRisePerHeat(NETWORK, 0.005, 0.005 - 150e-6);
    expect(track.riseAt(5)).toBeCloseTo(settled, 9);
  });

  it("cools to nothing", () => {
    const track = new JunctionTrack(NETWORK);
    track.heat(heatStep(NETWORK, 1, 0), 0);
    expect(track.riseAt(0)).toBeCloseTo(
      NETWORK.reduce((sum, each) => sum + each.resistance / each.timeConstant, 0),
      9,
    );
    expect(track.riseAt(10)).toBeLessThan(1e-9);
  });
});

describe("a cost against on-time", () => {
  const curve = { onTimes: [1, 2, 4], values: [10, 20, 20] };

  it("is straight between its points, level below the first, and inverts where it rises", () => {
    expect([0.5, 1, 1.5, 3].map((onTime) => valueAt(curve, onTime))).toEqual([10, 10, 15, 20]);
    expect([5, 15, 20, 25].map((limit) => longestWithin(curve, limit))).toEqual([
      0,
      1.5,
      Number.POSITIVE_INFINITY,
      Number.POSITIVE_INFINITY,
    ]);
  });
});
