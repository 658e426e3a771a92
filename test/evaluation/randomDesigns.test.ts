import { describe, expect, it } from "vitest";
import { parseDesign, serialiseDesign } from "../../src/design/design";
import { evaluate } from "../../src/evaluation/evaluate";
import { COUPLINGS, RESONANCES, randomDesigns } from "./randomDesigns";

const designs = randomDesigns(40);

describe("designs drawn at random", () => {
  it("are the same at every run", () => {
    expect(randomDesigns(3)).toEqual(designs.slice(0, 3));
  });

  it("are whole documents that read back as they were written", () => {
    for (const design of designs) expect(parseDesign(serialiseDesign(design))).toEqual({ ok: true, design });
  });

  it("are of all kinds: sparks, bridges, commutations, supplies, ways of growing", () => {
    const kinds = [
      designs.map(({ spark }) => spark.topology),
      designs.map(({ drive }) => drive.bridge),
      designs.map(({ drive }) => drive.commutation.mode),
      designs.map(({ spark }) => spark.growth),
      designs.map(({ drive }) => drive.overCurrentAction),
    ];
    for (const kind of kinds) expect(new Set(kind).size).toBe(2);
    expect(new Set(designs.map(({ drive }) => drive.supply.arrangement)).size).toBe(4);
  });

  it("can be solved from end to end, and are coils of the usual kind", () => {
    for (const design of designs) {
      const { secondary, coupling, response } = evaluate(design);
      expect(response).not.toBeNull();
      expect(secondary?.resonance).toBeGreaterThan(RESONANCES[0]);
      expect(secondary?.resonance).toBeLessThan(RESONANCES[1]);
      expect(coupling?.circuit).toBeGreaterThan(COUPLINGS[0]);
      expect(coupling?.circuit).toBeLessThan(COUPLINGS[1]);
    }
  });
});
