import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coilLimits } from "../../../src/calc/music/coilLimits";
import { dutyBefore } from "../../../src/calc/music/liveGate";
import { patternGate } from "../../../src/calc/music/pulsePattern";
import { runs } from "../../properties";
import { coilLoads } from "./coilLoads";
import { uniform } from "./uniform";

const INTERRUPTER = {
  onTime: 100e-6,
  repetitionRate: 100,
  longestOnTime: 200e-6,
  shortestGap: 600e-6,
  dutyLimit: 0.05,
  dutyWindow: 0.25,
};

describe("a pattern of test pulses", () => {
  it("has its groups, its rate and its pause", () => {
    const pattern = { rate: 100, onTime: 50e-6, pulses: 3, pause: 0.5, groups: 2 };
    const { gate, duration, asked, changed } = patternGate(pattern, coilLimits(INTERRUPTER, 1, null));
    expect(gate.starts.map((start) => Math.round(start / 1e5) / 1e4)).toEqual([
      0, 0.01, 0.02, 0.53, 0.54, 0.55,
    ]);
    expect(new Set(gate.onTimes)).toEqual(new Set([50_000]));
    expect({ duration, asked, changed }).toEqual({ duration: 1.06, asked: 6, changed: {} });
  });

  it("never passes a limit, and accounts for every pulse", () => {
    const pattern = fc.record({
      rate: uniform(1, 2000),
      onTime: uniform(0, 1e-3),
      pulses: fc.integer({ min: 1, max: 60 }),
      pause: uniform(0, 0.2),
      groups: fc.integer({ min: 1, max: 5 }),
    });
    fc.assert(
      fc.property(pattern, coilLoads, (asked, load) => {
        const made = patternGate(asked, coilLimits(INTERRUPTER, 1, load));
        const { starts, onTimes } = made.gate;
        const silenced = [
          "too short to sound",
          "dropped for the gap",
          "dropped for duty",
          "dropped for load",
        ] as const;
        const lost = silenced.reduce((sum, change) => sum + (made.changed[change] ?? 0), 0);
        expect(starts.length + lost).toBe(made.asked);
        starts.forEach((start, index) => {
          const end = (start + onTimes[index]) / 1e9;
          expect(onTimes[index]).toBeLessThanOrEqual(200_000);
          expect(onTimes[index]).toBeLessThanOrEqual(load.ceilings[0].onTime * 1e9);
          expect(dutyBefore(made.gate, end, 0.25)).toBeLessThanOrEqual(0.05 + 1e-9);
        });
      }),
      runs(200),
    );
  });
});
