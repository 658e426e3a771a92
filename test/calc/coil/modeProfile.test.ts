import { describe, expect, it } from "vitest";
import { profileVoltage, steepestGradient } from "../../../src/calc/coil/modeProfile";
import type { SecondaryMode } from "../../../src/calc/coil/secondaryModes";

const LENGTH = 0.5;

/** A mode of a given voltage along the winding, in equal sections. */
function modeOf(voltageAt: (part: number) => number, sections: number): SecondaryMode {
  const voltage = Array.from({ length: sections + 1 }, (_, s) => voltageAt(s / sections));
  return { resonance: 1e5, charges: [], current: [], voltage, effectiveCapacitance: 1e-11 };
}

describe("the steepest voltage along a winding", () => {
  it.each([1, 7, 100])("of a straight rise is one volt over the length, in %i sections", (sections) => {
    expect(
      steepestGradient(
        modeOf((part) => part, sections),
        LENGTH,
      ),
    ).toBeCloseTo(1 / LENGTH, 12);
  });

  it("of a quarter wave is π/2 of that, at its foot", () => {
    const quarter = modeOf((part) => Math.sin(0.5 * Math.PI * part), 200);
    expect(steepestGradient(quarter, LENGTH) / (0.5 * Math.PI)).toBeCloseTo(1 / LENGTH, 4);
  });

  it("counts a fall as a rise, wherever it is", () => {
    const falling = modeOf((part) => 1 + 3 * (1 - part) ** 2, 200);
    expect(steepestGradient(falling, LENGTH) * LENGTH).toBeCloseTo(6, 1);
  });
});

describe("the voltage at a height", () => {
  const profile = [
    { height: 0.1, voltage: 0, current: 1 },
    { height: 0.3, voltage: 0.6, current: 0.5 },
    { height: 0.5, voltage: 1, current: 0 },
  ];

  it.each([
    [0, 0],
    [0.1, 0],
    [0.2, 0.3],
    [0.3, 0.6],
    [0.45, 0.9],
    [0.5, 1],
    [2, 1],
  ])("at %d m is %d: straight between points, held beyond the ends", (height, voltage) => {
    expect(profileVoltage(profile, height)).toBeCloseTo(voltage, 12);
  });
});
