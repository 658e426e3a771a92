import { describe, expect, it } from "vitest";
import { WORKS } from "../../../src/calc/sources";
import { cite, plain } from "../../../src/evaluation/register/source";
import { sourceText, workText } from "../../../src/evaluation/register/sourceText";

describe("the sentence of sources", () => {
  it("writes a work out in full, with the place and how it is known", () => {
    expect(sourceText([cite("grover1946", "ch. 16")])).toBe(
      "F. W. Grover, Inductance Calculations, 1946, ch. 16 (from memory)",
    );
    expect(sourceText([cite("muller1956")])).toBe(
      "D. E. Muller, Mathematical Tables and Other Aids to Computation 10, 1956, 208 (from memory)",
    );
    expect(sourceText([cite("iec60747", "", "transient thermal impedance")])).toBe(
      "Transient thermal impedance: IEC 60747-9 (partly read)",
    );
  });

  it("says plainly where no work is cited", () => {
    expect(sourceText([plain("definition")])).toBe("Definition");
    expect(sourceText([plain("commonPractice", "tolerance of 1 %")])).toBe(
      "Tolerance of 1 %: common practice, no source",
    );
  });

  it("joins several, a capital at the first alone", () => {
    expect(sourceText([plain("circuitTheory"), cite("iec61010", "6.3.1", "60 V"), plain("dataSheet")])).toBe(
      "Circuit theory; 60 V: IEC 61010-1, 2010, 6.3.1 (from memory); data sheet",
    );
  });
});

describe("a work written out", () => {
  it("leaves out what is not known of it", () => {
    expect(workText(WORKS.thomson1853)).toBe("W. Thomson, 1853");
    expect(workText(WORKS.midi)).toBe("MIDI 1.0 Detailed Specification");
  });
});
