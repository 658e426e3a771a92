import { describe, expect, it } from "vitest";
import { spiralInductance, tabulateSpiral } from "../../../src/calc/field/spiralInductance";

const SPIRAL = { radius: 0.105, radialAdvance: 0.0145, axialAdvance: 0, conductorRadius: 0.00475, turns: 8 };

describe("a spiral's table", () => {
  it("gives a tap the same inductance however far the spiral goes on", () => {
    const short = spiralInductance(tabulateSpiral({ ...SPIRAL, turns: 5.3 }), 5.3);
    expect(spiralInductance(tabulateSpiral(SPIRAL), 5.3) / short).toBeCloseTo(1, 4);
  });

  it("converges: four times the nodes change taps from 0.3 turns on by less than 1e-4", () => {
    const [coarse, fine] = [tabulateSpiral(SPIRAL), tabulateSpiral(SPIRAL, 4)];
    for (let tap = 0.3; tap <= 8; tap += 0.37) {
      expect(Math.abs(spiralInductance(coarse, tap) / spiralInductance(fine, tap) - 1)).toBeLessThan(1e-4);
    }
  });

  it("has no value off the conductor", () => {
    const table = tabulateSpiral(SPIRAL);
    expect(spiralInductance(table, 9)).toBeNaN();
    expect(spiralInductance(table, -0.1)).toBeNaN();
    expect(spiralInductance(table, Number.NaN)).toBeNaN();
    expect(spiralInductance(table, 0)).toBeCloseTo(0, 12);
  });

  // pitches of 75 to 100 mm from an inner radius below half of them had no value: the spiral passed itself before its start
  it.each([
    [0.02, 0.1],
    [0.0246, 0.0859],
    [0.035, 0.0805],
    [0.12, 0.1],
  ])(
    "has a value that converges where the pitch is as wide as the inner radius: %d and %d m",
    (radius, pitch) => {
      const wide = { ...SPIRAL, radius, radialAdvance: pitch, conductorRadius: 0.001 };
      const [coarse, fine] = [tabulateSpiral(wide), tabulateSpiral(wide, 4)];
      for (let tap = 0.4; tap <= 8; tap += 0.41)
        expect(Math.abs(spiralInductance(coarse, tap) / spiralInductance(fine, tap) - 1)).toBeLessThan(3e-4);
    },
  );
});
