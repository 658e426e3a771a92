import { describe, expect, it } from "vitest";
import { columnsOf, spanOf, yAt } from "../../../src/panels/score/timeLinePath";

const moment = { quantity: "duty" as const, value: 0.043, limit: 0.05, time: 1, used: 0.86, rest: 0 };

describe("the span of a time line", () => {
  it("begins at rest, also where the coil never rests", () => {
    const span = spanOf([0.039, 0.043], moment);
    expect(span.from).toBeLessThanOrEqual(0);
    expect(yAt(0.043, span, 100)).toBeLessThan(30);
  });

  it("ends at rest where the limit lies below, as that of a bus does", () => {
    const span = spanOf([300, 310], { ...moment, quantity: "busVoltage", limit: 244, rest: 325 });
    expect(span.to).toBeGreaterThanOrEqual(325);
    expect(span.from).toBeLessThanOrEqual(244);
  });
});

describe("the columns of a time line", () => {
  it("are its values where there are few", () => {
    const values = [1, 2, 3];
    expect(columnsOf(values, 0, 600)).toBe(values);
  });

  it("keep the worst in sight, above rest or below it, and are never more than there is room for", () => {
    const values = Array.from({ length: 2400 }, () => 0.5);
    values[1234] = 9;
    const columns = columnsOf(values, 0, 600);
    expect(columns).toHaveLength(600);
    expect(Math.max(...columns)).toBe(9);
    expect(columns.indexOf(9) / 600).toBeCloseTo(1234 / 2400, 2);
    const bus = values.map((value) => 325 - value);
    expect(Math.min(...columnsOf(bus, 325, 600))).toBe(316);
  });
});
