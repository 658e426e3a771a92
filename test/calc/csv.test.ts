import { describe, expect, it } from "vitest";
import { textCell } from "../../src/calc/csv";

describe("a text cell of a CSV", () => {
  it.each(["=1+2", "+1", "-1", "@SUM(A1)", "\tx", "\rx"])("never begins as a formula: %j", (text) => {
    expect(textCell(text).replace(/^"/, "")).toMatch(/^'/);
  });

  it("is written as it stands where it is harmless, and between quotes where RFC 4180 asks for them", () => {
    expect(textCell("left")).toBe("left");
    expect(textCell('a "b", c')).toBe('"a ""b"", c"');
    expect(textCell("=a,b")).toBe('"\'=a,b"');
  });
});
