import { describe, expect, it } from "vitest";
import type { CoilLoad } from "../../../src/calc/music/coilLoad";
import { stepOf, supplyAt, timeLine } from "../../../src/calc/music/timeLine";
import { worstMoments } from "../../../src/calc/music/worstMoments";

const cost = { mainsTime: 0, busTime: 0, bankTime: 0, lasts: 200e-6 };
const LOAD: CoilLoad = {
  costs: [
    { ...cost, onTime: 50e-6, energy: 0.1, switchHeat: 0.01, junctionRise: 1, bankHeat: 0.001, sag: 2 },
    { ...cost, onTime: 100e-6, energy: 0.4, switchHeat: 0.04, junctionRise: 4, bankHeat: 0.004, sag: 5 },
  ],
  ceilings: [],
  thermal: [{ resistance: 0.5, timeConstant: 0.1 }],
  caseTemperature: 318.15,
  junctionLimit: 423.15,
  junctionAllowance: 105,
  airTemperature: 293.15,
  bankThermal: { resistance: 20, timeConstant: 300 },
  supply: [
    { power: 0, mainsCurrent: 0, busVoltage: 320 },
    { power: 100, mainsCurrent: 1, busVoltage: 310 },
  ],
  circuitCurrent: 16,
  leastBusVoltage: 240,
  busLag: 0.02,
  window: 0.25,
};

/** A steady tone: pulses of 100 µs, 100 a second. */
function tone(seconds: number) {
  const count = seconds * 100;
  return {
    starts: Array.from({ length: count }, (_, index) => index * 1e7),
    onTimes: new Array<number>(count).fill(100_000),
  };
}

function lineOf(gate: ReturnType<typeof tone>, duration: number) {
  const line = timeLine(gate, duration, LOAD, 0.25);
  if (!line.load) throw new Error("no load");
  return { ...line, ...line.load };
}

describe("the time line of a steady tone", () => {
  const line = lineOf(tone(4), 4);

  it("shows the duty and the power of the tone, and what the supply gives under it", () => {
    expect(line.duty[20]).toBeCloseTo(0.01, 6);
    expect(line.power[20]).toBeCloseTo(40, 6);
    expect(line.mainsCurrent[20]).toBeCloseTo(0.4, 6);
    expect(line.busVoltage[40]).toBeCloseTo(316 - 5, 6);
  });

  it("heats the junction as a train of heat pulses does, a geometric series of R·E/τ, IEC 60747-9", () => {
    // each burst's heat comes 200 µs after its start: what n bursts have left at the start of the next
    const each = (0.5 / 0.1) * 0.04;
    const decay = Math.exp(-0.01 / 0.1);
    const first = each * Math.exp(-(0.01 - 200e-6) / 0.1);
    const bursts = Math.round((line.time[20] + stepOf(4, 0.25)) / 0.01) - 1;
    const left = (first * (1 - decay ** bursts)) / (1 - decay);
    expect(line.junctionTemperature[20]).toBeCloseTo(318.15 + left + 4, 9);
  });

  it("comes to the mean rise R·P beside the ripple of one burst", () => {
    const settled = line.junctionTemperature.at(-1) ?? 0;
    const mean = 318.15 + 0.5 * 4 + 4;
    expect(Math.abs(settled - mean)).toBeLessThan((0.5 / 0.1) * 0.04);
  });

  it("warms the bank slowly towards its resistance times its power", () => {
    const after = (line.time.at(-1) ?? 0) + stepOf(4, 0.25);
    expect(line.bankTemperature.at(-1)).toBeCloseTo(293.15 + 20 * 0.4 * (1 - Math.exp(-after / 300)), 6);
  });

  it("stays at rest in silence", () => {
    const silent = lineOf({ starts: [], onTimes: [] }, 1);
    expect(Math.max(...silent.power)).toBe(0);
    expect(Math.max(...silent.junctionTemperature)).toBe(318.15);
    expect(Math.min(...silent.busVoltage)).toBe(320);
  });

  it("finds the worst moment of a loud passage within a quiet score", () => {
    const loud = tone(0.5);
    const line = timeLine(
      { starts: loud.starts.map((start) => start + 2e9), onTimes: loud.onTimes },
      4,
      LOAD,
      0.25,
    );
    const moments = worstMoments(line, LOAD, 0.05);
    expect(moments.map(({ quantity }) => quantity)).toContain("mainsCurrent");
    for (const { quantity, time, used } of moments) {
      if (quantity !== "bankTemperature") expect(time).toBeGreaterThanOrEqual(2);
      if (quantity !== "bankTemperature") expect(time).toBeLessThan(2.5);
      expect(used ?? 0).toBeLessThan(1);
    }
  });
});

describe("the time line without costs", () => {
  it("has the duty alone", () => {
    const { duty, load } = timeLine(tone(1), 1, null, 0.25);
    expect(duty[10]).toBeCloseTo(0.01, 6);
    expect(load).toBeNull();
  });
});

describe("the time line of a score whose steps are longer than the window", () => {
  it("shows the same duty, power and supply all along", () => {
    const duration = 602;
    const four = { starts: Array.from({ length: 4 * duration }, (_, index) => index * 2.5e8) };
    const line = lineOf({ ...four, onTimes: four.starts.map(() => 100_000) }, duration);
    expect(stepOf(duration, 0.25)).toBe(0.5);
    const farthest = (values: number[], from: number) =>
      Math.max(...values.map((value) => Math.abs(value / from - 1)));
    expect(farthest(line.duty, 4e-4)).toBeLessThan(1e-9);
    expect(farthest(line.power, 1.6)).toBeLessThan(1e-9);
    expect(farthest(line.mainsCurrent, 0.016)).toBeLessThan(1e-9);
  });
});

describe("the steps of a time line", () => {
  it.each([0, 0.01, 0.05])("are one of a score as short as one, %d s", (duration) => {
    expect(timeLine(tone(0.01), duration, LOAD, 0.25).time).toEqual([0]);
  });

  it("are parts of the window for short scores and whole windows for long ones, some thousands at most", () => {
    expect(stepOf(60, 0.25)).toBe(0.05);
    for (const duration of [0, 1, 119, 121, 599, 601, 36_000]) {
      const step = stepOf(duration, 0.25);
      expect(duration / step).toBeLessThanOrEqual(2400 + 1e-6);
      if (step > 0.25) expect(step % 0.25).toBeCloseTo(0, 9);
    }
  });
});

describe("the supply's table", () => {
  it("is straight between its points and goes on beyond the last", () => {
    expect(supplyAt(LOAD.supply, 50)).toEqual({ mainsCurrent: 0.5, busVoltage: 315 });
    expect(supplyAt(LOAD.supply, 200)).toEqual({ mainsCurrent: 2, busVoltage: 300 });
  });
});
