import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sliceOf } from "../../../src/panels/score/previewSlice";
import { runs } from "../../properties";

const RATE = 16_000;

describe("a slice of what a gate sounds like", () => {
  it("holds each pulse for three samples, louder the longer it is", () => {
    const gate = { starts: [1e6, 3e6], onTimes: [75_000, 150_000] };
    const samples = sliceOf(gate, 0, 64, RATE);
    expect([...samples.slice(15, 20)]).toEqual([0, 0.25, 0.25, 0.25, 0]);
    expect([...samples.slice(47, 52)]).toEqual([0, 0.5, 0.5, 0.5, 0]);
  });

  it("is silent where there is no gate", () => {
    expect(sliceOf(undefined, 3, 10, RATE).every((sample) => sample === 0)).toBe(true);
  });

  it("joins its neighbours without a seam, wherever the score is cut", () => {
    const pulses = fc.array(fc.integer({ min: 1, max: 5_000_000 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(pulses, fc.integer({ min: 1, max: 999 }), (gaps, cut) => {
        let time = 0;
        const starts = gaps.map((gap) => {
          time += gap;
          return time;
        });
        const gate = { starts: Float64Array.from(starts), onTimes: starts.map(() => 300_000) };
        const whole = sliceOf(gate, 0, 1000, RATE);
        const parts = [...sliceOf(gate, 0, cut, RATE), ...sliceOf(gate, cut / RATE, 1000 - cut, RATE)];
        expect(parts).toEqual([...whole]);
      }),
      runs(100),
    );
  });
});
