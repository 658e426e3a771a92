import { describe, expect, it } from "vitest";
import { runBurst } from "../../../src/calc/burst/burstCase";
import { rmsOfBursts } from "../../../src/calc/burst/burstResult";
import { noLoadBusVoltage, rectifierUnderLoad } from "../../../src/calc/circuit/rectifier";
import { switchLosses } from "../../../src/calc/circuit/switchLosses";
import type { CoilLoad } from "../../../src/calc/music/coilLoad";
import { keyFrequency } from "../../../src/calc/music/equalTemperament";
import { type NoteLimit, noteLimits } from "../../../src/calc/music/noteLimits";
import { toneReading } from "../../../src/calc/music/toneReading";
import type { Design } from "../../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { designBursts } from "../../../src/evaluation/burst/burstStage";
import { evaluate } from "../../../src/evaluation/evaluate";
import { coilLoad as newCoilLoad } from "../../../src/evaluation/score/coilLoadStage";
import { seeded } from "../../calc/coil/randomCoils";
import { randomDesigns } from "../randomDesigns";

/** Worked out once for each design. */
const known = new Map<Design, CoilLoad | null>();

function coilLoad(design: Design): CoilLoad | null {
  const load = known.get(design) ?? newCoilLoad(design);
  known.set(design, load);
  return load;
}

function burstAt(design: Design, onTime: number) {
  const bursts = designBursts(design);
  const burstCase = bursts?.loaded.case;
  const burst = burstCase && runBurst({ ...burstCase, drive: { ...burstCase.drive, onTime } });
  if (!burst) throw new Error("no burst");
  return burst;
}

/** Every limit as a part that the simulated burst itself, repeated at a rate, uses of it. */
function usedParts(design: Design, rate: number, onTime: number): Record<string, number> {
  const { drive, interrupter, tank } = design;
  const burst = burstAt(design, onTime);
  const { supplied, returned, turnOff } = burst.energy;
  const power = Math.max(0, supplied - returned + turnOff) * rate;
  const supply = rectifierUnderLoad({ ...drive, power });
  const { peakJunction } = switchLosses(drive, burst, rate);
  const { caseTemperature, junctionLimit } = drive.switch;
  const noLoad = noLoadBusVoltage(drive.supply);
  const fall = noLoad - supply.lowestVoltage + burst.reservoirSag;
  const tripped = burst.limitReachedAt !== null && drive.overCurrentAction === "end burst";
  return {
    "longest on-time": onTime / interrupter.longestOnTime,
    gap: interrupter.shortestGap / (1 / rate - onTime),
    duty: (rate * onTime) / interrupter.dutyLimit,
    junction: (peakJunction - caseTemperature) / (junctionLimit - caseTemperature),
    "bank current": rmsOfBursts(burst.squareCurrentTime, rate) / (tank.unit.rmsCurrent * tank.strings),
    "bank voltage": burst.peakBankVoltage / (tank.unit.dcVoltage * tank.unitsInSeries),
    "bank peak current": burst.peakPrimaryCurrent.value / (tank.unit.peakCurrent * tank.strings),
    "mains current": supply.mainsCurrent / drive.supply.circuitCurrent,
    // three quarters of the no-load voltage must be left
    "bus voltage": fall / (0.25 * noLoad),
    "over-current limit": tripped ? Number.POSITIVE_INFINITY : 0,
  };
}

/** Designs whose parts are drawn so that each kind of limit is met by some. */
function strained(design: Design, random: () => number): Design {
  const weak = () => random() < 0.35;
  const { tank, drive } = design;
  const { supply } = drive;
  return {
    ...design,
    tank: {
      ...tank,
      unit: { ...tank.unit, dcVoltage: 6000, peakCurrent: 2000, rmsCurrent: weak() ? 3 : 60 },
    },
    drive: {
      ...drive,
      reservoirCapacitance: weak() ? 3e-4 : 3e-3,
      supply: {
        ...supply,
        circuitCurrent: weak() ? 4 : 32,
        sourceResistance: weak() ? 2 : supply.sourceResistance,
      },
      switch: { ...drive.switch, caseTemperature: weak() ? drive.switch.junctionLimit - 4 : 318.15 },
    },
  };
}

const KEYS = [31, 43, 55, 67, 79, 91];

function limitsOf(design: Design): NoteLimit[] {
  const load = coilLoad(design);
  if (!load) throw new Error("no load");
  return noteLimits(design.interrupter, load).filter(({ key }) => KEYS.includes(key));
}

const random = seeded(5);
const DRAWN = randomDesigns(6).map((design) => strained(design, random));

describe("the limits of notes", () => {
  it("hold every limit when the burst itself is simulated at them, and at shorter on-times", () => {
    const met = new Set<string>();
    for (const design of [pierHallLeft, pierHallRight, ...DRAWN])
      for (const { rate, onTime, limitedBy } of limitsOf(design)) {
        met.add(limitedBy);
        if (onTime === null) continue;
        for (const part of [1, 0.4 + 0.6 * random()]) {
          const used = usedParts(design, rate, part * onTime);
          for (const [limit, value] of Object.entries(used))
            expect(value, `${limit} at ${rate} Hz, ${part * onTime} s`).toBeLessThanOrEqual(1 + 1e-9);
        }
      }
    for (const limiter of ["duty", "junction", "bank current", "mains current", "over-current limit"])
      expect([...met]).toContain(limiter);
  });

  it("fall, or stay, as the rate rises", () => {
    for (const design of [pierHallLeft, ...DRAWN]) {
      const load = coilLoad(design);
      const onTimes = noteLimits(design.interrupter, load, 0, 140).map(({ onTime }) => onTime ?? 0);
      for (let index = 1; index < onTimes.length; index++)
        expect(onTimes[index]).toBeLessThanOrEqual(onTimes[index - 1] + 1e-15);
    }
  });

  it("are not far below the limits they name: the burst uses three quarters and more of most", () => {
    const used: number[] = [];
    for (const design of [pierHallLeft, pierHallRight, ...DRAWN])
      for (const { rate, onTime, limitedBy } of limitsOf(design)) {
        if (onTime === null || !["mains current", "bank current", "junction"].includes(limitedBy)) continue;
        used.push(usedParts(design, rate, onTime)[limitedBy]);
      }
    expect(used.length).toBeGreaterThan(10);
    const sorted = used.sort((a, b) => a - b);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeGreaterThan(0.75);
  });

  it("rise with a stronger mains circuit and a cooler case", () => {
    const at = (design: Design, key: number) => {
      const { onTime } = noteLimits(design.interrupter, coilLoad(design), key, key)[0];
      return onTime ?? 0;
    };
    const { drive } = pierHallLeft;
    const circuit = (circuitCurrent: number): Design => ({
      ...pierHallLeft,
      drive: { ...drive, supply: { ...drive.supply, circuitCurrent } },
    });
    expect(at(circuit(10), 69)).toBeLessThan(at(circuit(16), 69));
    const warm = (caseTemperature: number): Design => ({
      ...pierHallLeft,
      drive: { ...drive, switch: { ...drive.switch, caseTemperature } },
    });
    expect(at(warm(420), 60)).toBeLessThan(at(warm(415), 60));
    expect(noteLimits(pierHallLeft.interrupter, coilLoad(warm(424)), 60, 60)[0]).toMatchObject({
      onTime: null,
      limitedBy: "junction",
    });
  });

  it("are the interrupter's alone where a design has no solution", () => {
    const [toroid] = pierHallLeft.topLoad.elements;
    const elements = [{ ...toroid, outerDiameter: 0.25, centreHeight: 0.4 }];
    const none = { ...pierHallLeft, topLoad: { ...pierHallLeft.topLoad, elements } };
    expect(coilLoad(none)).toBeNull();
    const [limit] = noteLimits(none.interrupter, null, 60, 60);
    expect(limit).toMatchObject({ rate: keyFrequency(60), limitedBy: "longest on-time" });
  });
});

describe("what bursts cost", () => {
  it("is the burst's own account at the table's on-times, or more: turn-off at its worst phase", () => {
    for (const design of [pierHallLeft, ...DRAWN.slice(0, 4)])
      for (const { onTime, energy, switchHeat, junctionRise } of coilLoad(design)?.costs ?? []) {
        const burst = burstAt(design, onTime);
        const { supplied, returned, turnOff } = burst.energy;
        const losses = switchLosses(design.drive, burst, 0);
        expect(energy).toBeGreaterThanOrEqual((supplied - returned + turnOff) * (1 - 1e-9));
        expect(switchHeat).toBeGreaterThanOrEqual(
          (losses.conductionEnergy + losses.turnOffEnergy) * (1 - 1e-9),
        );
        expect(junctionRise).toBeGreaterThanOrEqual(losses.rise.firstBurst * (1 - 1e-9));
      }
  });

  it("reads of a steady tone what the drive's own evaluation says, from above and within a fifth", () => {
    const tones: [number, number][] = [
      [100e-6, 50],
      [80e-6, 200],
      [110e-6, 120],
    ];
    for (const [onTime, repetitionRate] of tones) {
      const interrupter = { ...pierHallLeft.interrupter, onTime, repetitionRate };
      const design = { ...pierHallLeft, interrupter };
      const { drive } = evaluate(design);
      if (!drive) throw new Error("no drive");
      const reading = toneReading(repetitionRate, onTime, coilLoad(design));
      const parts = [
        (reading.power ?? 0) / (drive.averagePower ?? 0),
        (reading.mainsCurrent ?? 0) / (drive.mainsCurrent ?? 0),
        ((reading.junctionTemperature ?? 0) - 318.15) / ((drive.junctionTemperature ?? 0) - 318.15),
      ];
      for (const part of parts.slice(0, 2)) expect(part).toBeLessThan(1.2);
      expect(parts[2]).toBeLessThan(1.7);
      for (const part of parts) expect(part).toBeGreaterThanOrEqual(1 - 5e-3);
    }
  });

  it("never falls with the on-time", () => {
    for (const design of DRAWN) {
      const costs = coilLoad(design)?.costs ?? [];
      for (let index = 1; index < costs.length; index++)
        for (const name of ["energy", "switchHeat", "junctionRise", "bankTime", "mainsTime"] as const)
          expect(costs[index][name]).toBeGreaterThanOrEqual(costs[index - 1][name]);
    }
  });
});

describe("a unit of the bank", () => {
  // natural convection and radiation together some 10 W/(m²K); aluminium, films and resin some 1 J/(g·K); no source for one capacitor
  it("warms as a body of 50 cm² and 30 g does in still air", () => {
    const { resistance, timeConstant } = coilLoad(pierHallLeft)!.bankThermal;
    expect(resistance).toBeCloseTo(1 / (10 * 50e-4), 9);
    expect(timeConstant).toBeCloseTo(resistance * 30, 9);
  });
});
