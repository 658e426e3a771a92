import { describe, expect, it } from "vitest";
import { sineResponse } from "../../../src/calc/circuit/network";
import { pierHallLeft } from "../../../src/design/examples";
import { evaluate } from "../../../src/evaluation/evaluate";
import { responseNetwork } from "../../../src/evaluation/response/responseStage";

const { losses, secondary, primary, tank, response } = evaluate(pierHallLeft);
const allowed = evaluate({
  ...pierHallLeft,
  corrections: { ...pierHallLeft.corrections, lossAllowance: 0.25 },
});

describe("the losses", () => {
  it("add up to the resistance of the winding and to that behind the primary's Q", () => {
    expect(losses?.secondary.total).toBeCloseTo(secondary?.acResistance ?? 0, 9);
    const behindQ = (tank?.characteristicImpedance ?? 0) / (primary?.qualityFactor ?? 1);
    expect((losses?.primary.total ?? 0) / behindQ).toBeCloseTo(1, 9);
    expect((losses?.primary.tube.resistance ?? 0) / (primary?.acResistance ?? 1)).toBeCloseTo(1, 12);
  });

  it("are shares of one whole, none below nothing", () => {
    for (const { total: _, ...parts } of [losses?.secondary, losses?.primary].flatMap((each) => each ?? [])) {
      const shares = Object.values(parts).map(({ share }) => share);
      for (const share of shares) expect(share).toBeGreaterThanOrEqual(0);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    }
  });

  // IEC 60384-1: tan δ is the ratio of equivalent series resistance to reactance
  it("have the bank's part from its tan δ, and the switches' from two of them in the loop", () => {
    const { unit } = pierHallLeft.tank;
    const reactance = 1 / (2 * Math.PI * (primary?.resonance ?? 0) * (tank?.capacitance ?? 1));
    expect((losses?.primary.bank.resistance ?? 0) / (unit.dissipationFactor * reactance)).toBeCloseTo(1, 9);
    const { onStateResistance, parallelDevices } = pierHallLeft.drive.switch;
    const inLoop = pierHallLeft.drive.bridge === "full" ? 2 : 1;
    expect(losses?.primary.switches.resistance).toBeCloseTo(
      (inLoop * onStateResistance) / parallelDevices,
      12,
    );
  });

  it("grow by the allowance alone, and leave the other parts as they are", () => {
    expect((allowed.losses?.secondary.total ?? 0) / (losses?.secondary.total ?? 1)).toBeCloseTo(1.25, 9);
    expect(allowed.losses?.primary.allowance.share).toBeCloseTo(0.2, 9);
    expect(
      (allowed.losses?.primary.bank.resistance ?? 0) / (losses?.primary.bank.resistance ?? 1),
    ).toBeCloseTo(1, 9);
  });
});

describe("the response's figures", () => {
  it("have the bridge see a pure resistance at every zero-phase crossing", () => {
    const network = responseNetwork(pierHallLeft, false);
    expect(response?.zeroPhase.length).toBeGreaterThan(0);
    for (const { frequency, resistance } of response?.zeroPhase ?? []) {
      const impedance = network && sineResponse(network, frequency).inputImpedance;
      expect(Math.abs(impedance?.im ?? 1) / resistance).toBeLessThan(1e-6);
      expect((impedance?.re ?? 0) / resistance).toBeCloseTo(1, 9);
    }
  });

  it("put the first maximum one beat after the start", () => {
    expect((response?.firstMaximum ?? 0) * (response?.beatFrequency ?? 0)).toBeCloseTo(1, 12);
    expect(response?.beatFrequency).toBeCloseTo((response?.upperPole ?? 0) - (response?.lowerPole ?? 0), 6);
  });

  it("ring down faster with the spark", () => {
    expect(response?.loadedLowerPoleQuality).toBeLessThan(response?.lowerPoleQuality ?? 0);
    expect(response?.loadedUpperPoleQuality).toBeLessThan(response?.upperPoleQuality ?? 0);
  });
});
