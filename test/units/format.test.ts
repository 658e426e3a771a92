import { describe, expect, it } from "vitest";
import { formatIn, formatQuantity } from "../../src/units/format";

const text = (...parameters: Parameters<typeof formatQuantity>) => formatQuantity(...parameters).text;

describe("a value for reading", () => {
  it("has engineering prefixes, four digits and a narrow space before its unit", () => {
    expect(text(140200, "frequency", "metric")).toBe("140.2\u202fkHz");
    expect(text(2.34e-11, "capacitance", "metric")).toBe("23.40\u202fpF");
    expect(text(0.0552, "inductance", "metric")).toBe("55.20\u202fmH");
    expect(text(999.96e-6, "time", "metric")).toBe("1.000\u202fms");
  });

  it("shows drawing lengths in millimetres or inches and long ones in metres or feet", () => {
    expect(text(0.56, "length", "metric")).toBe("560.0\u202fmm");
    expect(text(583.2, "length", "metric")).toBe("583.2\u202fm");
    expect(text(0.0254, "length", "inch")).toBe("1.000\u202fin");
    expect(text(4.2, "length", "inch")).toBe("13.78\u202fft");
  });

  it("shows temperatures on the reader's scale and a true minus sign", () => {
    expect(text(293.15, "temperature", "metric")).toBe("20.00\u202f°C");
    expect(text(293.15, "temperature", "inch")).toBe("68.00\u202f°F");
    expect(text(-0.012, "percent", "metric")).toBe("−1.200\u202f%");
  });

  it("writes what is beyond all numbers in a small unit by its exponent", () => {
    expect(formatIn({ symbol: "nF", factor: 1e-9 }, 1.5e300, "capacitance", 7).number).toBe("1.5e+309");
    expect(formatIn({ symbol: "in", factor: 0.0254 }, 1e308, "length", 7).number).toBe("0.3937008e+310");
    expect(formatIn({ symbol: "nF", factor: 1e-9 }, -1e300, "capacitance", 7).number).toBe("-1e+309");
  });

  it("shows a dash for what is no number", () => {
    for (const value of [null, undefined, Number.NaN, Number.POSITIVE_INFINITY])
      expect(text(value, "length", "metric")).toBe("–");
  });

  it("gives whole counts without decimals and editing texts without trailing zeros", () => {
    expect(text(18, "count", "metric")).toBe("18");
    expect(formatQuantity(0.000371, "wireDiameter", "metric", 12).number).toBe("0.371");
  });

  it("prints a power of ten where zeros would fill the place", () => {
    expect(text(-3e-20, "capacitance", "metric")).toBe("−3.000\u202f×\u202f10⁻⁸\u202fpF");
    expect(text(1e30, "ratio", "metric")).toBe("1.000\u202f×\u202f10³⁰");
    expect(formatQuantity(3e-20, "capacitance", "metric", 12).number).toBe("3e-8");
  });

  it("reads what no number in the unit can hold", () => {
    expect(text(1e300, "capacitancePerLength", "metric")).toBe("1.000\u202f×\u202f10³¹²\u202fpF/m");
    expect(formatQuantity(-1.5e308, "smallLength", "metric", 12).number).toBe("-1.5e+311");
    expect(text(1e-300, "length", "inch")).toBe("3.937\u202f×\u202f10⁻²⁹⁹\u202fin");
  });
});
