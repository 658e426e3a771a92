import { describe, expect, it } from "vitest";
import { averagePower, dutyOf, rmsOfBursts } from "../../../src/calc/burst/burstResult";

describe("bursts that are repeated", () => {
  it("heat as a steady current of their RMS does", () => {
    // 100 A for 1 ms, 50 times a second: 100·√(1/20), by the definition of the RMS value
    expect(rmsOfBursts(100 ** 2 * 1e-3, 50)).toBeCloseTo(100 * Math.sqrt(0.05), 9);
  });

  it("take power and time in proportion to their rate", () => {
    expect(averagePower(5, 200)).toBe(1000);
    expect(dutyOf({ onTime: 150e-6, repetitionRate: 200 })).toBeCloseTo(0.03, 12);
  });
});
