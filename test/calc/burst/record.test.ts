import { describe, expect, it } from "vitest";
import { burstRecord, closeHalfCycle, recordInterval } from "../../../src/calc/burst/record";
import type { Instant } from "../../../src/calc/burst/stepLadder";
import { CURRENT, modeCurrent, modeVoltage } from "../../../src/calc/burst/system";

const [CURRENT_CREST, TOP_CREST, BASE_CREST] = [300, 4e5, 5];
const LAG = 0.7;

/** Sines of one radian a second: the current, and the top's and the base's a phase behind it. */
function instantAt(time: number): Instant {
  const [x, rate] = [new Float64Array(5), new Float64Array(5)];
  x[CURRENT] = CURRENT_CREST * Math.sin(time);
  rate[CURRENT] = CURRENT_CREST * Math.cos(time);
  x[modeVoltage(0)] = -TOP_CREST * Math.sin(time - LAG);
  rate[modeVoltage(0)] = -TOP_CREST * Math.cos(time - LAG);
  x[modeCurrent(0)] = BASE_CREST * Math.sin(time - LAG);
  rate[modeCurrent(0)] = BASE_CREST * Math.cos(time - LAG);
  return { x, rate };
}

const NO_LOSSES = { modeResistances: [0], sparkConductance: 0 };

function newRecord() {
  return burstRecord(1, 1, 0, { baseCurrentRatios: [0.5], waveform: false });
}

/** What is kept of a half cycle from 0 that is followed in equal steps up to a time. */
function keptUpTo(end: number, steps: number) {
  const record = newRecord();
  const step = end / steps;
  for (let at = 0; at < steps; at++)
    recordInterval(record, NO_LOSSES, at * step, step, instantAt(at * step), instantAt((at + 1) * step));
  closeHalfCycle(record, end, 1, true);
  return record;
}

describe("what is kept of a half cycle", () => {
  it("is each crest at its place, between the ends of the steps", () => {
    const { halfCycles, extremes } = keptUpTo(Math.PI, 13);
    const { primaryCurrent, topVoltage, baseCurrent } = extremes;
    expect(primaryCurrent.value / CURRENT_CREST).toBeCloseTo(1, 4);
    expect(primaryCurrent.time).toBeCloseTo(Math.PI / 2, 3);
    expect(topVoltage.value / TOP_CREST).toBeCloseTo(1, 4);
    expect(topVoltage.time).toBeCloseTo(Math.PI / 2 + LAG, 3);
    expect(baseCurrent / (0.5 * BASE_CREST)).toBeCloseTo(1, 4);
    expect(halfCycles).toHaveLength(1);
    expect(halfCycles[0]).toMatchObject({ from: 0, to: Math.PI, peakTime: primaryCurrent.time });
  });

  it.each([1, 6])("is the end itself where all still rises there, in %i steps", (steps) => {
    const end = 1.5;
    const { primaryCurrent, topVoltage, baseCurrent } = keptUpTo(end, steps).extremes;
    expect(primaryCurrent).toEqual({ value: expect.closeTo(CURRENT_CREST * Math.sin(end), 9), time: end });
    expect(topVoltage.time).toBe(end);
    expect(topVoltage.value / TOP_CREST).toBeCloseTo(Math.sin(end - LAG), 12);
    expect(baseCurrent / (0.5 * BASE_CREST)).toBeCloseTo(Math.sin(end - LAG), 12);
  });

  it("is nothing of a half cycle without a current", () => {
    const record = newRecord();
    closeHalfCycle(record, 1, 1, true);
    expect(record.halfCycles).toEqual([]);
  });
});
