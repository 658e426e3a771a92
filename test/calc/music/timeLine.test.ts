import { describe, expect, it } from "vitest";
import { burstCost, type TimeLineSettings, timeLine } from "../../../src/calc/music/timeLine";

const SETTINGS: TimeLineSettings = {
  costs: [
    { onTime: 50e-6, energy: 0.1, switchHeat: 0.01, junctionRise: 1, bankHeat: 0.001 },
    { onTime: 100e-6, energy: 0.4, switchHeat: 0.04, junctionRise: 4, bankHeat: 0.004 },
  ],
  thermal: [{ resistance: 0.5, timeConstant: 0.1 }],
  caseTemperature: 318.15,
  bank: { resistance: 20, timeConstant: 300 },
  airTemperature: 293.15,
  step: 0.05,
};

/** A steady tone: pulses of 100 µs, 100 a second. */
function tone(seconds: number) {
  const count = seconds * 100;
  return {
    starts: Array.from({ length: count }, (_, index) => index * 1e7),
    onTimes: new Array(count).fill(100_000),
  };
}

describe("the cost of a burst", () => {
  it("is met at the table's on-times, lies between them in between, and is nothing for none", () => {
    expect(burstCost(SETTINGS.costs, 100e-6).energy).toBeCloseTo(0.4, 12);
    expect(burstCost(SETTINGS.costs, 75e-6).energy).toBeCloseTo(0.25, 12);
    expect(burstCost(SETTINGS.costs, 0).energy).toBe(0);
  });
});

describe("the time line of a steady tone", () => {
  const line = timeLine(tone(4), 4, SETTINGS);

  it("shows the duty and the power of the tone", () => {
    expect(line.duty[10]).toBeCloseTo(0.01, 6);
    expect(line.power[10]).toBeCloseTo(40, 6);
  });

  it("heats the junction as the step response of a Foster element, R·P·(1 − e^(−t/τ)), says", () => {
    // closed form of the network: IEC 60747-9, transient thermal impedance
    const after = line.time[19] + SETTINGS.step;
    const rise = 0.5 * 4 * (1 - Math.exp(-after / 0.1));
    expect(line.junctionTemperature[19]).toBeCloseTo(318.15 + rise + 4, 3);
  });

  it("warms the bank slowly towards its resistance times its power", () => {
    const after = line.time.at(-1)! + SETTINGS.step;
    expect(line.bankTemperature.at(-1)).toBeCloseTo(293.15 + 20 * 0.4 * (1 - Math.exp(-after / 300)), 6);
  });

  it("stays at rest in silence", () => {
    const silent = timeLine({ starts: [], onTimes: [] }, 1, SETTINGS);
    expect(Math.max(...silent.power)).toBe(0);
    expect(Math.max(...silent.junctionTemperature)).toBe(318.15);
  });
});
