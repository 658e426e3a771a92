import { describe, expect, it } from "vitest";
import { deviationText, scientific } from "../../../src/panels/theory/figures";
import type { ReferenceRow } from "../../../src/panels/theory/referenceRow";

const row = (part: Partial<ReferenceRow>) => ({ absolute: false, unit: "H", ...part }) as ReferenceRow;

describe("figures of the reference table", () => {
  it("print powers of ten in full and middling numbers plainly", () => {
    expect(scientific(8.600157e-12, 6)).toBe("8.60016\u202f×\u202f10⁻¹²");
    expect(scientific(-2500000, 2)).toBe("−2.5\u202f×\u202f10⁶");
    expect(scientific(0.73508, 6)).toBe("0.735080");
    expect(scientific(123.4, 2)).toBe("1.2\u202f×\u202f10²");
    expect(scientific(0, 6)).toBe("0");
  });

  it("give relative deviations in per cent and absolute ones in the row's unit", () => {
    expect(deviationText(-0.00162, row({}))).toBe("−0.16\u202f%");
    expect(deviationText(0.012, row({ absolute: true }))).toBe("0.012\u202fH");
  });
});
