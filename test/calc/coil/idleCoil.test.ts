import { describe, expect, it } from "vitest";
import { doesRing, inducedInIdle, openPrimaryPerTopVolt } from "../../../src/calc/coil/idleCoil";

const idle = {
  capacitance: 30e-12,
  qualityFactor: 100,
  breakoutVoltage: 200e3,
  baseCurrentPerVolt: 2e-5,
  primaryPerVolt: 0.02,
  bridgeVoltage: 325,
};

describe("what is induced in an idle coil", () => {
  it("is the wave's largest magnitude and what goes with it", () => {
    expect(inducedInIdle(idle, [0, 5000, -10_000, 2000], 1)).toEqual({
      voltage: 10_000,
      partOfBreakout: 0.05,
      baseCurrent: 0.2,
      primaryVoltage: 200,
      bound: false,
    });
  });

  it("is only a bound above a tenth of the burst's energy: C·V²/2 = 1.5 mJ", () => {
    expect(inducedInIdle(idle, [10_000], 0.0151).bound).toBe(false);
    expect(inducedInIdle(idle, [10_000], 0.0149).bound).toBe(true);
  });

  it("is only a bound where the idle bridge's diodes conduct", () => {
    expect(inducedInIdle({ ...idle, bridgeVoltage: 201 }, [10_000], 1).bound).toBe(false);
    expect(inducedInIdle({ ...idle, bridgeVoltage: 199 }, [10_000], 1).bound).toBe(true);
    expect(inducedInIdle({ ...idle, primaryPerVolt: null, bridgeVoltage: 0 }, [10_000], 1)).toMatchObject({
      primaryVoltage: null,
      bound: false,
    });
  });

  it("needs a coil that rings: a quality factor above that of critical damping, one half", () => {
    expect([0.49, 0.5, 0.51].map(doesRing)).toEqual([false, false, true]);
  });

  // transformer with an open winding: U₁/U₂ = M/L₂ = k·√(L₁/L₂), K. Küpfmüller, Theoretische Elektrotechnik (from memory)
  it("stands across an open primary as k·√(L₁/L₂)", () => {
    const [primary, secondary, mutual] = [10e-6, 40e-3, 100e-6];
    const coupling = mutual / Math.sqrt(primary * secondary);
    expect(openPrimaryPerTopVolt(coupling, primary, secondary)).toBeCloseTo(mutual / secondary, 12);
  });
});
