import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CoilLimits } from "../../../src/calc/music/lane";
import { dutyBefore, LiveGate } from "../../../src/calc/music/liveGate";
import { runs } from "../../properties";
import { largestWindowSum } from "./largestWindowSum";
import { uniform } from "./uniform";

const limits: CoilLimits = {
  longestOnTime: 200e-6,
  shortestGap: 300e-6,
  dutyLimit: 0.05,
  dutyWindow: 0.1,
  voices: 3,
  onTimeByRate: [],
  load: null,
};

describe("a gate that is played by hand", () => {
  it("of a lone tone has its rate and its on-time", () => {
    const live = new LiveGate(limits);
    live.press({ id: "a", rate: 100, onTime: 80e-6 }, 0);
    const { starts, onTimes } = live.advance(1);
    expect(starts).toHaveLength(100);
    expect(starts[99] - starts[0]).toBeCloseTo(0.99e9, -1);
    expect(new Set(onTimes)).toEqual(new Set([80_000]));
    expect(dutyBefore(live.gate, 1, 0.1)).toBeCloseTo(0.008, 6);
  });

  // the second tone's pulses come while the gap after the first's is still kept: up to 400 µs after each of its starts
  it.each([
    ["played an eighth of a period late at most", 290e-6, 200],
    ["dropped where they would come later", 260e-6, 100],
  ])("of two tones at 1 kHz has the second's pulses %s", (_, behind, expected) => {
    const live = new LiveGate({ ...limits, dutyLimit: 1 });
    live.press({ id: "a", rate: 1000, onTime: 100e-6 }, 0);
    live.press({ id: "b", rate: 1000, onTime: 100e-6 }, behind);
    const { starts } = live.advance(0.1);
    expect(starts.filter((start) => start < 0.1e9)).toHaveLength(expected);
  });

  it("hands every pulse out once, and none after the release", () => {
    const live = new LiveGate(limits);
    live.press({ id: "a", rate: 50, onTime: 50e-6 }, 0);
    const counts = [0.095, 0.195, 0.295].map((time) => live.advance(time).starts.length);
    expect(counts).toEqual([5, 5, 5]);
    live.release("a");
    expect(live.advance(0.5).starts).toEqual([]);
  });

  it("lets the weakest give way, of equal ones the oldest", () => {
    const live = new LiveGate(limits);
    for (const [id, onTime] of [
      ["a", 60e-6],
      ["b", 90e-6],
      ["c", 60e-6],
      ["d", 70e-6],
    ] as const)
      live.press({ id, rate: 100, onTime }, 0);
    expect(live.tones.map(({ id }) => id)).toEqual(["b", "c", "d"]);
  });

  it("forgets nothing that a limit still looks back on", () => {
    const live = new LiveGate({ ...limits, dutyLimit: 0.001 });
    live.press({ id: "a", rate: 500, onTime: 100e-6 }, 0);
    live.advance(0.05);
    live.releaseAll();
    live.advance(0.06);
    live.press({ id: "b", rate: 500, onTime: 100e-6 }, 0.06);
    expect(live.advance(0.1).starts).toEqual([]);
  });

  it("never passes a limit, whatever is pressed when", () => {
    const act = fc.record({
      id: fc.constantFrom("a", "b", "c", "d", "e"),
      rate: uniform(0.5, 8000),
      onTime: uniform(0, 1e-3),
      down: fc.boolean(),
      wait: uniform(0, 0.2),
    });
    fc.assert(
      fc.property(fc.array(act, { minLength: 1, maxLength: 30 }), (acts) => {
        const live = new LiveGate(limits);
        const all = { starts: [] as number[], onTimes: [] as number[] };
        let time = 0;
        for (const { id, rate, onTime, down, wait } of acts) {
          if (down) live.press({ id, rate, onTime }, time);
          else live.release(id);
          time += wait;
          const made = live.advance(time);
          all.starts.push(...made.starts);
          all.onTimes.push(...made.onTimes);
        }
        const isWithin = (start: number, i: number) =>
          all.onTimes[i] <= 200_000 && (i === 0 || start - all.starts[i - 1] - all.onTimes[i - 1] >= 300_000);
        expect(all.starts.filter((start, i) => !isWithin(start, i))).toEqual([]);
        expect(largestWindowSum(all, 0.1e9)).toBeLessThanOrEqual(0.05 * 0.1e9 + 0.1);
      }),
      runs(150),
    );
  });
});
