import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arrowStep, stepped } from "../../src/ui/step";

describe("the step of an arrow key", () => {
  it("is a one, two or five of about a hundredth of what is shown", () => {
    expect(arrowStep(560, false)).toBe(5);
    expect(arrowStep(125, false)).toBe(1);
    expect(arrowStep(0.335, false)).toBeCloseTo(0.002, 12);
    expect(arrowStep(-230, false)).toBe(2);
  });

  it("is at least one where only whole numbers have a meaning", () => {
    expect(arrowStep(3, true)).toBe(1);
    expect(arrowStep(1480, true)).toBe(10);
  });

  it("is never nothing, and stays between a two-hundredth and a fiftieth", () => {
    expect(arrowStep(0, false)).toBeGreaterThan(0);
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), (shown) => {
        const share = arrowStep(shown, false) / shown;
        expect(share).toBeGreaterThan(1 / 201);
        expect(share).toBeLessThan(1 / 49);
      }),
    );
  });

  it("leaves no dust of binary fractions behind", () => {
    expect(stepped(0.1, 0.2)).toBe("0.3");
    expect(stepped(14.5, -0.1)).toBe("14.4");
  });
});
