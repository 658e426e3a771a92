import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runningPole } from "../../../src/calc/burst/burstResult";
import { sineResponse } from "../../../src/calc/circuit/network";
import { polePair } from "../../../src/calc/circuit/poles";
import { responseCurve } from "../../../src/calc/circuit/responseCurve";
import { suggestedTap } from "../../../src/calc/circuit/tuningTarget";
import { magnitude } from "../../../src/calc/linear/complex";
import { runs } from "../../properties";
import { network } from "./drivenNetworks";

describe("the response curve", () => {
  it("keeps to its number of points, rises in frequency, and has no value that a log axis cannot show", () => {
    fc.assert(
      fc.property(network, (of) => {
        const { lower, upper } = polePair({ ...of, load: null })!;
        const [from, to] = [0.7 * lower.frequency, 1.4 * upper.frequency];
        const curve = responseCurve(of, [from, lower.frequency, upper.frequency, to], 400);
        expect(curve.length).toBeLessThanOrEqual(400);
        curve.forEach(({ frequency, topVoltagePerVolt, inputImpedance }, index) => {
          expect(frequency).toBeGreaterThan(curve[index - 1]?.frequency ?? 0);
          expect(topVoltagePerVolt).toBeGreaterThan(0);
          expect(inputImpedance.magnitude).toBeGreaterThan(0);
        });
      }),
      runs(50, 20_240_517),
    );
  });

  it("drawn straight from point to point on log paper stays within 2 % of the response near the poles", () => {
    fc.assert(
      fc.property(network, (of) => {
        const { lower, upper } = polePair({ ...of, load: null })!;
        const ends = [0.9 * lower.frequency, lower.frequency, upper.frequency, 1.1 * upper.frequency];
        const curve = responseCurve(of, ends, 400);
        curve.slice(1).forEach((point, index) => {
          const before = curve[index];
          const middle = magnitude(
            sineResponse(of, 0.5 * (before.frequency + point.frequency)).topVoltagePerVolt,
          );
          const drawn = Math.sqrt(before.topVoltagePerVolt * point.topVoltagePerVolt);
          expect(Math.abs(drawn / middle - 1)).toBeLessThan(0.02);
        });
      }),
      runs(50, 20_240_517),
    );
  });
});

describe("the running pole", () => {
  it("is the one that the frequency is nearer to", () => {
    const poles = { lower: { frequency: 90, qualityFactor: 9 }, upper: { frequency: 110, qualityFactor: 9 } };
    expect(runningPole(91, poles)).toBe("lower");
    expect(runningPole(112, poles)).toBe("upper");
  });
});

describe("the suggested tap", () => {
  it("is where the primary meets the frequency", () => {
    expect(suggestedTap((tap) => 1000 / tap, 250, 1, 8)).toBeCloseTo(4, 8);
  });

  it("is none where no tap on the conductor will do", () => {
    expect(suggestedTap((tap) => 1000 / tap, 100, 1, 8)).toBeNull();
    expect(suggestedTap(() => Number.NaN, 100, 1, 8)).toBeNull();
  });
});
