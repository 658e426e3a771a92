/** Loads of coils drawn by fast-check: costs that rise with the on-time, limits that bind now and then. */
import fc from "fast-check";
import { type BurstCost, neverFalling } from "../../../src/calc/music/burstCost";
import type { CoilLoad } from "../../../src/calc/music/coilLoad";
import { meanWindow } from "../../../src/calc/music/coilLoad";
import { uniform } from "./uniform";

const ON_TIMES = [4e-6, 12e-6, 30e-6, 70e-6, 120e-6, 200e-6, 400e-6];

const positive = (max: number) => uniform(max / 10, max);

function costAt(onTime: number, scale: number): BurstCost {
  const square = (onTime / 200e-6) ** 2;
  return {
    onTime,
    energy: 10 * square * scale,
    switchHeat: 0.1 * square * scale,
    junctionRise: 4 * square * scale,
    bankHeat: 0.004 * square * scale,
    lasts: onTime + 50e-6,
    sag: 8 * square * scale,
    mainsTime: 12e-3 * square * scale,
    busTime: 6e-3 * square * scale,
    bankTime: 9e-3 * square * scale,
  };
}

export const coilLoads: fc.Arbitrary<CoilLoad> = fc
  .record({
    scales: fc.array(positive(3), { minLength: ON_TIMES.length, maxLength: ON_TIMES.length }),
    ceiling: fc.constantFrom(30e-6, 150e-6, 1),
    resistances: fc.tuple(positive(0.02), positive(0.1), positive(0.3)),
    allowance: positive(50),
    dutyWindow: uniform(0.01, 0.5),
  })
  .map(({ scales, ceiling, resistances, allowance, dutyWindow }) => ({
    costs: neverFalling(ON_TIMES.map((onTime, index) => costAt(onTime, scales[index]))),
    ceilings: [{ limiter: "over-current limit" as const, onTime: ceiling }],
    thermal: [1e-3, 2e-2, 0.2].map((timeConstant, index) => ({
      resistance: resistances[index],
      timeConstant,
    })),
    caseTemperature: 320,
    junctionLimit: 320 + allowance,
    junctionAllowance: allowance,
    airTemperature: 293,
    bankThermal: { resistance: 20, timeConstant: 600 },
    supply: [
      { power: 0, mainsCurrent: 0, busVoltage: 320 },
      { power: 5000, mainsCurrent: 30, busVoltage: 260 },
    ],
    circuitCurrent: 16,
    leastBusVoltage: 240,
    busLag: 0.02,
    window: meanWindow(dutyWindow),
  }));
