import { describe, expect, it } from "vitest";
import { busLag, powerAt, supplyPoints } from "../../../src/calc/circuit/supplyPoints";
import { pierHallLeft } from "../../../src/design/examples";

const INNER_RESISTANCE = 2;
const CAPACITANCE = 3e-3;

/** A direct source behind a resistance, whose answers are known in closed form. */
const BENCH = {
  drive: {
    ...pierHallLeft.drive,
    reservoirCapacitance: CAPACITANCE,
    supply: {
      ...pierHallLeft.drive.supply,
      arrangement: "bench" as const,
      mainsVoltage: 300,
      sourceResistance: INNER_RESISTANCE,
    },
  },
};

/** W, half of what a source of 300 V behind 2 Ω can give at all. */
const MOST = (0.5 * 300 ** 2) / (4 * INNER_RESISTANCE);

describe("a supply under rising power", () => {
  const points = supplyPoints(BENCH, MOST);

  it("begins without load and ends at the most that is asked for", () => {
    expect(points[0]).toEqual({ power: 0, mainsCurrent: 0, busVoltage: 300 });
    expect(points.at(-1)?.power).toBeCloseTo(MOST, 9);
  });

  it("gives each power as current times the voltage that its resistance leaves", () => {
    for (const { power, mainsCurrent, busVoltage } of points.slice(1)) {
      expect(mainsCurrent * busVoltage).toBeCloseTo(power, 6);
      expect(300 - INNER_RESISTANCE * mainsCurrent).toBeCloseTo(busVoltage, 9);
    }
  });

  it("follows with the time constant of its resistance and the reservoir", () => {
    expect(busLag(BENCH, points)).toBeCloseTo(INNER_RESISTANCE * CAPACITANCE, 12);
  });

  it("meets a limit between its points, and none that lies beyond them", () => {
    const current = powerAt(points, (point) => point.mainsCurrent - 10);
    expect(current / (10 * (300 - 10 * INNER_RESISTANCE))).toBeCloseTo(1, 2);
    expect(powerAt(points, (point) => point.mainsCurrent - 1000)).toBe(Number.POSITIVE_INFINITY);
    expect(powerAt(points, (point) => point.mainsCurrent + 1)).toBe(0);
  });
});
