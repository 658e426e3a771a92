import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandPath, energyFlow } from "../../../src/panels/burst/energyFlow";
import { runs } from "../../properties";

const parts = fc.array(fc.double({ min: 1e-9, max: 100, noNaN: true }), { minLength: 1, maxLength: 7 });

describe("the bands of the energy picture", () => {
  it("are as thick as their shares and fill the supply, and no two labels share a place", () => {
    fc.assert(
      fc.property(parts, (energies) => {
        const supplied = energies.reduce((sum, each) => sum + each, 0);
        const flow = energyFlow(
          supplied,
          energies.map((energy, index) => ({ id: `${index}`, energy })),
        );
        const last = flow.bands[flow.bands.length - 1];
        expect(last.left + last.thickness).toBeCloseTo(flow.supplyTop + flow.supplyHeight, 6);
        expect(last.slotTop + last.slotHeight).toBeLessThanOrEqual(flow.height + 1e-6);
        flow.bands.forEach((band, index) => {
          expect(band.thickness / flow.supplyHeight).toBeCloseTo(energies[index] / supplied, 9);
          const next = flow.bands[index + 1];
          if (next) expect(next.slotTop).toBeGreaterThan(band.slotTop + band.slotHeight);
        });
      }),
      runs(100, 7),
    );
  });

  it("run from the supply to their label", () => {
    const [band] = energyFlow(2, [{ id: "spark", energy: 2 }]).bands;
    expect(bandPath(band, 0, 100)).toBe("M0 0C50 0 50 0 100 0V150C50 150 50 150 0 150Z");
  });
});
