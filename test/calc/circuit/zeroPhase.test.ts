import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sineResponse } from "../../../src/calc/circuit/network";
import { polePair } from "../../../src/calc/circuit/poles";
import { beatFrequency, firstTopVoltageMaximum } from "../../../src/calc/circuit/response";
import { zeroPhaseCrossings } from "../../../src/calc/circuit/zeroPhase";
import { runs } from "../../properties";
import burst from "../../reference/burst.json";
import { burstNetwork } from "../../reference/checks/burst";
import { network, primaryFrequency } from "./drivenNetworks";

describe("zero-phase crossings", () => {
  it("of a lightly damped coil are both poles and one between them", () => {
    const found = zeroPhaseCrossings(burstNetwork("S1"), 2e5, 6e5);
    expect(found.map(({ slope }) => slope)).toEqual([1, -1, 1]);
    const { lower, upper } = burst.sets.S1.ac;
    expect(found[0].frequency / lower.zin_min_f).toBeCloseTo(1, 3);
    expect(found[2].frequency / upper.zin_min_f).toBeCloseTo(1, 3);
  });

  it("have no reactance, and a resistance above zero", () => {
    fc.assert(
      fc.property(network, (of) => {
        const own = primaryFrequency(of);
        const crossings = zeroPhaseCrossings(of, 0.5 * own, 2 * own);
        expect(crossings.length % 2).toBe(1);
        for (const { frequency, resistance } of crossings) {
          const { im } = sineResponse(of, frequency).inputImpedance;
          expect(Math.abs(im)).toBeLessThan(1e-6 * (1 + resistance));
          expect(resistance).toBeGreaterThan(0);
        }
      }),
      runs(100, 20_240_517),
    );
  });
});

describe("the beat", () => {
  // burst.json, network S1: beat of the lossless poles, and the envelope's first maximum at the mid frequency
  it("is the difference of the poles, and the first maximum comes one beat period after the start", () => {
    const poles = polePair(burstNetwork("S1"))!;
    const { closed_form_lossless, fixed } = burst.sets.S1;
    expect(beatFrequency(poles) / closed_form_lossless.beat).toBeCloseTo(1, 3);
    const { t_envelope } = fixed.mid.exact.first_beat_vtop;
    expect(Math.abs(firstTopVoltageMaximum(poles) / t_envelope - 1)).toBeLessThan(0.01);
  });
});
