import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Dimension } from "../../src/units/dimension";
import { formatQuantity } from "../../src/units/format";
import { parseQuantity } from "../../src/units/parse";
import { QUANTITIES } from "../../src/units/quantities";
import { runs } from "../properties";

const READS: [string, Dimension, number][] = [
  ["12.5in", "length", 0.3175],
  ["12,5 in", "length", 0.3175],
  ["3/8in", "length", 0.009525],
  ["1 1/2 in", "length", 0.0381],
  ["5'3\"", "length", 1.6002],
  ["125", "length", 0.125],
  ["2*3.5", "length", 0.007],
  ["(10+2)/3 mm", "length", 0.004],
  ["1,5", "smallLength", 0.0015],
  ["20 thou", "smallLength", 0.000508],
  ["1e-9 F", "capacitance", 1e-9],
  ["4n7", "capacitance", 4.7e-9],
  ["4n7F", "capacitance", 4.7e-9],
  ["200n", "capacitance", 2e-7],
  ["0.2uF", "capacitance", 2e-7],
  ["0.2 µF", "capacitance", 2e-7],
  ["150 kHz", "frequency", 150e3],
  ["150khz", "frequency", 150e3],
  ["150", "frequency", 150e3],
  ["4.7k", "resistance", 4700],
  ["6.8 ohm", "resistance", 6.8],
  ["20°C", "temperature", 293.15],
  ["20", "temperature", 293.15],
  ["68 °F", "temperature", 293.15],
  ["293.15 K", "temperature", 293.15],
  ["5 %", "percent", 0.05],
  ["5", "percent", 0.05],
  ["−3", "turns", -3],
  ["6.2 turns", "turns", 6.2],
  ["1013.25 mbar", "pressure", 101325],
  ["1,234.5", "length", 1.2345],
  ["1.234,5", "length", 1.2345],
  ["1,234,567", "count", 1234567],
  ["1½ in", "length", 0.0381],
  ["4R7", "resistance", 4.7],
  ["68R", "resistance", 68],
  ["１２．５ｍｍ", "length", 0.0125],
  ["2e3k", "resistance", 2e6],
  ["3 MV/m", "fieldStrength", 3e6],
];

describe("the number parser", () => {
  it.each(READS)("reads “%s” as a %s of %f", (text, dimension, value) => {
    const read = parseQuantity(text, dimension, "metric");
    expect(read).toMatchObject({ ok: true });
    if (read.ok) expect(read.value / value).toBeCloseTo(1, 9);
  });

  it("takes a bare number in the unit that the field shows", () => {
    expect(parseQuantity("2", "capacitance", "metric", "pF")).toEqual({ ok: true, value: 2e-12 });
    expect(parseQuantity("2", "length", "inch")).toEqual({ ok: true, value: 0.0508 });
  });

  // ASTM B258: No. 36 is 0.0050 in and No. 0000 is 0.4600 in by definition
  it.each([
    ["AWG 36", 0.127e-3],
    ["36 awg", 0.127e-3],
    ["awg 4/0", 11.684e-3],
    ["AWG 28", 0.32109e-3],
  ])("reads the gauge %s", (text, diameter) => {
    const read = parseQuantity(text, "wireDiameter", "metric");
    expect(read.ok && Math.abs(read.value / diameter - 1)).toBeLessThan(1e-4);
  });

  it("asks about one comma before exactly three digits", () => {
    expect(parseQuantity("1,234 mm", "length", "metric")).toEqual({
      ok: false,
      message: "“1,234 mm” may be 1.234 or 1234: which is meant?",
      choices: ["1.234 mm", "1234 mm"],
    });
    expect(parseQuantity("0,335", "wireDiameter", "metric")).toMatchObject({ ok: true });
  });

  it.each([
    ["", "length"],
    ["abc", "length"],
    ["12 kHz", "length"],
    ["1/0", "length"],
    ["((((1", "length"],
    ["1e999", "length"],
    ["NaN", "length"],
    ["Infinity", "length"],
    ["--", "length"],
    ["1 2", "length"],
    ["1..2", "length"],
    ["1e308 MHz", "frequency"],
    ["150 mhz", "frequency"],
    ["5 MF", "capacitance"],
    ["5 apples", "count"],
  ] as [string, Dimension][])("says what is wrong with “%s” in a sentence", (text, dimension) => {
    const read = parseQuantity(text, dimension, "metric");
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.message).toMatch(/^.{10,}[.?]$/);
  });

  it("never throws and never yields what is not finite, whatever is typed", () => {
    const pieces = fc.constantFrom(
      "1",
      "2.5",
      ",",
      ".",
      "e",
      "-",
      "+",
      "*",
      "/",
      "(",
      ")",
      " ",
      "k",
      "µ",
      "mm",
      "in",
      "Hz",
      "°",
      "%",
      "9".repeat(30),
      "1e308",
      "NaN",
    );
    fc.assert(
      fc.property(
        fc.array(pieces, { maxLength: 30 }),
        fc.constantFrom(...(Object.keys(QUANTITIES) as Dimension[])),
        (parts, dimension) => {
          const read = parseQuantity(parts.join(""), dimension, "metric");
          return read.ok ? Number.isFinite(read.value) : read.message.length > 0;
        },
      ),
      runs(3000, 5),
    );
  });

  it("reads back what the formatter writes for editing, in either system", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-9, max: 1e5, noNaN: true }),
        fc.constantFrom(
          ...(Object.keys(QUANTITIES) as Dimension[]).filter(
            (dimension) => dimension !== "count" && dimension !== "temperature",
          ),
        ),
        fc.constantFrom("metric" as const, "inch" as const),
        (value, dimension, system) => {
          const { number, unit } = formatQuantity(value, dimension, system, 12);
          const read = parseQuantity(number, dimension, system, unit);
          return read.ok && Math.abs(read.value - value) <= 1e-9 * Math.max(value, 1e-3);
        },
      ),
      runs(2000, 3),
    );
    for (const system of ["metric", "inch"] as const) {
      const { number, unit } = formatQuantity(318.15, "temperature", system, 12);
      const read = parseQuantity(number, "temperature", system, unit);
      expect(read.ok && read.value).toBeCloseTo(318.15, 8);
    }
  });
});
