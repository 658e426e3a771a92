import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { valueAt } from "../../../src/calc/music/burstCost";
import { coilLimits } from "../../../src/calc/music/coilLimits";
import { meanTimeCurve } from "../../../src/calc/music/coilLoad";
import { LiveGate } from "../../../src/calc/music/liveGate";
import { sharedOnTimes } from "../../../src/calc/music/sharedOnTimes";
import { runs } from "../../properties";
import { coilLoads } from "./coilLoads";
import { uniform } from "./uniform";

const INTERRUPTER = {
  onTime: 100e-6,
  repetitionRate: 100,
  longestOnTime: 200e-6,
  shortestGap: 300e-6,
  dutyLimit: 0.05,
  dutyWindow: 0.25,
};
const LIMITS = coilLimits(INTERRUPTER, 4, null);

describe("tones that share a coil", () => {
  it("give up nothing where there is room, or where one sounds alone", () => {
    expect(sharedOnTimes(LIMITS, [{ rate: 1000, onTime: 200e-6 }])).toEqual([Number.POSITIVE_INFINITY]);
    const low = [50, 60].map((rate) => ({ rate, onTime: 100e-6 }));
    expect(sharedOnTimes(LIMITS, low)).toEqual([Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]);
  });

  it("give up the same part of their on-times for the duty", () => {
    const shared = sharedOnTimes(LIMITS, [
      { rate: 200, onTime: 200e-6 },
      { rate: 300, onTime: 100e-6 },
    ]);
    // 200 µs at 204 Hz and 100 µs at 304 Hz ask for 7.12 % of 5 % allowed
    expect(shared[0]).toBeCloseTo((200e-6 * 0.05) / 0.0712, 9);
    expect(shared[1]).toBeCloseTo((100e-6 * 0.05) / 0.0712, 9);
  });

  it("do not stutter: a chord that asks for too much is steady, and drops no pulse for duty", () => {
    const live = new LiveGate(LIMITS);
    const rates = [97, 151, 211];
    for (const rate of rates) live.press({ id: String(rate), rate, onTime: 200e-6 }, 0);
    const { starts, onTimes } = live.advance(3);
    const longest = Math.max(...onTimes);
    expect(onTimes.filter((onTime) => onTime < 0.99 * longest).length).toBeLessThan(0.01 * onTimes.length);
    const perQuarter = Array.from({ length: 12 }, (_, quarter) =>
      starts.reduce(
        (sum, start, index) => sum + (Math.floor(start / 25e7) === quarter ? onTimes[index] : 0),
        0,
      ),
    );
    expect(Math.min(...perQuarter) / Math.max(...perQuarter)).toBeGreaterThan(0.85);
  });

  it("together keep the means, whatever the coil", () => {
    const tones = fc.array(fc.record({ rate: uniform(20, 900), onTime: uniform(1e-6, 400e-6) }), {
      minLength: 2,
      maxLength: 5,
    });
    fc.assert(
      fc.property(tones, coilLoads, (asked, load) => {
        const limits = coilLimits(INTERRUPTER, 5, load);
        const shared = sharedOnTimes(limits, asked);
        if (!shared.every(Number.isFinite)) return;
        const curve = meanTimeCurve(load);
        // below the table's first on-time every burst costs as much as there
        if (Math.min(...shared) < load.costs[0].onTime) return;
        const used = shared.reduce(
          (sum, onTime, index) => sum + valueAt(curve, onTime) * asked[index].rate,
          0,
        );
        expect(used).toBeLessThanOrEqual(1 + 1e-9);
        const duty = shared.reduce((sum, onTime, index) => sum + onTime * asked[index].rate, 0);
        expect(duty).toBeLessThanOrEqual(INTERRUPTER.dutyLimit + 1e-12);
      }),
      runs(300),
    );
  });
});
