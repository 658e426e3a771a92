import { describe, expect, it } from "vitest";
import { simulateBurst } from "../../../src/calc/burst/stepper";
import {
  commutationAdvice,
  leadTimeFor,
  quietLead,
  zeroAdvance,
} from "../../../src/calc/circuit/commutationAdvice";
import type { Network } from "../../../src/calc/circuit/network";
import { STIFF_DRIVE } from "./drivenNetworks";

const commutation = {
  mode: "primary current" as const,
  leadTime: 5.5e-7,
  delay: 2.5e-7,
  deadTime: 2e-7,
  frequency: null,
};

describe("advice on the commutation", () => {
  it("turns an advance into a lead and back", () => {
    expect(zeroAdvance(leadTimeFor(4e-7, 1e5)!, 1e5)).toBeCloseTo(4e-7, 15);
    expect(leadTimeFor(3e-6, 1e5)).toBeNull();
  });

  it("leads by the delay to be at zero, and by the dead time too to have the next pair on at zero", () => {
    const advice = commutationAdvice({ commutation }, 1e5, 500);
    expect(zeroAdvance(advice.leadAtZero!, 1e5)).toBeCloseTo(2.5e-7, 15);
    expect(zeroAdvance(advice.leadAcrossDeadTime!, 1e5)).toBeCloseTo(4.5e-7, 15);
    expect(advice.longestDeadTime).toBeCloseTo(zeroAdvance(5.5e-7, 1e5) - 2.5e-7, 15);
    expect(advice.turnOffCurrent).toBeGreaterThan(0);
  });

  it("finds, over a whole burst, a lead near the delay", () => {
    const coil: Network = {
      primary: { inductance: 1.2e-5, capacitance: 1.7e-7, resistance: 0.04 },
      modes: [{ inductance: 0.117, capacitance: 1.8e-11, resistance: 320, mutual: 1.8e-4 }],
      load: { resistance: 2.2e5, capacitance: 3.5e-12, topology: "series" },
    };
    const drive = { ...STIFF_DRIVE, commutation };
    const { leadTime, turnOffCurrent } = quietLead(coil, drive, { shortest: 0, longest: 1e-6 });
    expect(leadTime).toBeGreaterThan(2e-7);
    expect(leadTime).toBeLessThan(3.5e-7);
    expect(turnOffCurrent).toBeLessThan(0.02 * simulateBurst(coil, drive)!.peakPrimaryCurrent.value);
  });
});
