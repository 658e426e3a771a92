import { describe, expect, it } from "vitest";
import { currentSense, proposeSense } from "../../../src/calc/circuit/currentTransformer";

const chain = { turns: [40, 25], burden: 6.8, coreArea: 5e-5, saturationFluxDensity: 0.35 };

describe("a chain of current transformers", () => {
  it("divides by all turns: 480 A through 40 and 25 over 6.8 Ω make 3.26 V", () => {
    const { ratio, voltage, current, burdenPower } = currentSense(chain, 480, 20, 1e5);
    expect(ratio).toBe(1000);
    expect(voltage).toBeCloseTo(3.264, 9);
    expect(current).toBeCloseTo(0.48, 12);
    expect(burdenPower).toBeCloseTo(6.8 * 0.02 ** 2, 12);
  });

  it("burdens the first core with 1/25² of the resistance", () => {
    const { cores } = currentSense(chain, 480, 20, 1e5);
    const omega = 2 * Math.PI * 1e5;
    expect(cores[0].fluxDensity).toBeCloseTo(((480 / 40) * (6.8 / 625)) / (omega * 40 * 5e-5), 12);
    expect(cores[1].fluxDensity).toBeCloseTo(3.264 / (omega * 25 * 5e-5), 12);
    expect(cores[0].margin).toBeGreaterThan(1);
  });
});

describe("a proposed chain", () => {
  it.each([20, 100, 480, 1500])("puts the comparator level near the wanted one at %i A", (limit) => {
    const { turns, burden, comparatorVoltage } = proposeSense(limit, 5);
    const { voltage } = currentSense({ ...chain, turns, burden }, limit, 0, 1e5);
    expect(voltage).toBeCloseTo(comparatorVoltage, 9);
    expect(Math.abs(comparatorVoltage / 5 - 1)).toBeLessThan(0.06); // half a step of E24
    expect(turns.every((each) => Number.isInteger(each) && each >= 1 && each <= 120)).toBe(true);
  });
});
