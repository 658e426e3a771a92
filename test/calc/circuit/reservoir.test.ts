import { describe, expect, it } from "vitest";
import {
  discharge,
  fuseHint,
  inrushPeak,
  precharge,
  reservoirRmsCurrent,
} from "../../../src/calc/circuit/reservoir";
import { simulate } from "./simulator";

describe("a reservoir", () => {
  // closed form: 3.3 mF × 22 kΩ × ln(325/60) = 122.65 s, 325²/22 kΩ = 4.80 W, ½·3.3 mF·325² = 174.3 J
  it("is at 60 V after RC·ln(U/60 V)", () => {
    const { timeToSafe, power, energy } = discharge(3.3e-3, 325, 22e3);
    expect(timeToSafe).toBeCloseTo(122.65, 1);
    expect(325 * Math.exp(-timeToSafe / (3.3e-3 * 22e3))).toBeCloseTo(60, 9);
    expect(power).toBeCloseTo(4.801, 3);
    expect(energy).toBeCloseTo(174.28, 2);
  });

  it("that never is above 60 V needs no time, and without a resistor never gets there", () => {
    expect(discharge(1e-3, 48, 1e3).timeToSafe).toBe(0);
    expect(discharge(1e-3, 325, Number.POSITIVE_INFINITY).timeToSafe).toBe(Number.POSITIVE_INFINITY);
  });

  it("is charged to 95 % after three time constants, nearly", () => {
    const { peakCurrent, time } = precharge(1e-3, 325, 47);
    expect(peakCurrent).toBeCloseTo(6.915, 3);
    expect(time / 47e-3).toBeCloseTo(3, 1);
  });

  it.each([
    [0.5, 2e-4],
    [0.5, 2e-5],
    [0.02, 1e-3],
  ])("draws the inrush of ngspice through %f Ω and %f H", async (resistance, inductance) => {
    const capacitance = 1e-3;
    const column = await simulate(
      [
        "* inrush",
        "Vstep a 0 325",
        `Rsource a b ${resistance}`,
        `Lsource b c ${inductance} ic=0`,
        `Cbus c 0 ${capacitance} ic=0`,
        ".tran 1e-6 6e-3 0 1e-6 uic",
        ".end",
        "",
      ].join("\n"),
    );
    const peak = Math.max(...column("i(vstep)").map(Math.abs));
    expect(inrushPeak(325, resistance, inductance, capacitance) / peak).toBeCloseTo(1, 3);
  });

  it("draws U/R at once where nothing else is in the way", () => {
    expect(inrushPeak(325, 0.5, 0, 1e-3)).toBe(650);
  });

  it("is heated by what pulses have beyond their mean", () => {
    // 10 A mean in half-sine pulses of π/2 the mean, full-wave: RMS 11.107, so 4.83 beyond the mean
    const pulses = { rmsCurrent: 11.107, meanCurrent: 10 };
    const even = { rmsCurrent: 10, meanCurrent: 10 };
    expect(reservoirRmsCurrent(pulses, { squareTime: 0, share: 1 }, 0)).toBeCloseTo(4.83, 2);
    expect(reservoirRmsCurrent(even, { squareTime: 1, share: 1 }, 200)).toBeCloseTo(10, 9);
  });

  it("is loaded by every other half cycle alone where a half bridge takes its halves in turn", () => {
    const even = { rmsCurrent: 10, meanCurrent: 10 };
    expect(reservoirRmsCurrent(even, { squareTime: 2, share: 0.5 }, 200)).toBeCloseTo(10, 9);
  });
});

describe("the hint for a fuse", () => {
  it("is the preferred rating above 1.25 times the current", () => {
    expect(fuseHint(8)).toBe(10);
    expect(fuseHint(8.1)).toBe(16);
    expect(fuseHint(1e4)).toBeNull();
  });
});
