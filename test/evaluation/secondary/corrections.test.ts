import { describe, expect, it } from "vitest";
import type { Corrections } from "../../../src/calc/design-parts";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { evaluate } from "../../../src/evaluation/evaluate";

const PAIRS = [
  ["former", "formerShift"],
  ["floorConducts", "floorShift"],
  ["wireCurrent", "wireCurrentShift"],
] as const;

function withCorrections(design: typeof pierHallLeft, part: Partial<Corrections>) {
  return evaluate({ ...design, corrections: { ...design.corrections, ...part } });
}

describe.each([pierHallLeft, pierHallRight])("the corrections of $name", (design) => {
  it.each(PAIRS)("say of %s what the switch does to the resonance, on as off", (name, id) => {
    const [off, on] = [false, true].map((value) => withCorrections(design, { [name]: value }));
    const change = (on.secondary?.resonance ?? 0) / (off.secondary?.resonance ?? 1) - 1;
    expect(change).not.toBe(0);
    // Rayleigh's quotient is stationary: its error goes with the square of the change
    const secondOrder = 2 * change ** 2 + 1e-9;
    expect(Math.abs((off.corrections?.[id] ?? 0) - change)).toBeLessThan(secondOrder);
    expect(Math.abs((on.corrections?.[id] ?? 0) - change)).toBeLessThan(secondOrder);
  });
});
