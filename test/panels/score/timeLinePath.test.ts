import { describe, expect, it } from "vitest";
import { spanOf, yAt } from "../../../src/panels/score/timeLinePath";

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
