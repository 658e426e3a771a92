import { describe, expect, it } from "vitest";
import { wireDiamagnetism } from "../../../src/calc/coil/wireDiamagnetism";

/** Coil A of the reference files. */
const COIL_A = { turns: 1040, pitch: 0.3 / 1040, radius: 0.037642, conductorRadius: 0.000125 };

describe("the flux that a winding's wire pushes out", () => {
  it("lowers the inductance of a coil of the reference kind by most of the 0.07 to 0.10 % of the full solution", () => {
    // reference/method-notes.md: wire AC redistribution at f1, L −0.07 … −0.10 %; skin depth of coil A from losses.json
    // each wire alone in the mean field: neighbours that react on each other add the rest, as they do to the loss
    const part = wireDiamagnetism(COIL_A, 0.000109199);
    expect(part).toBeGreaterThan(0.0005);
    expect(part).toBeLessThan(0.0011);
  });

  it("is nothing at low frequency and πa²/(Rp) for a perfect conductor", () => {
    expect(wireDiamagnetism(COIL_A, 1)).toBeLessThan(1e-9);
    const limit = (Math.PI * COIL_A.conductorRadius ** 2) / (COIL_A.radius * COIL_A.pitch);
    expect(wireDiamagnetism(COIL_A, 1e-8) / limit).toBeCloseTo(1, 3);
  });
});
