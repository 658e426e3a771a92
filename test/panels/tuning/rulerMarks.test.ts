import { describe, expect, it } from "vitest";
import { rulerMarks } from "../../../src/panels/tuning/rulerMarks";

describe("the marks of the tap's scale", () => {
  it("stand at every quarter turn, numbered at whole ones", () => {
    expect(rulerMarks(1.6).map(({ turn, text }) => text ?? turn)).toEqual([
      "0",
      0.25,
      0.5,
      0.75,
      "1",
      1.25,
      1.5,
    ]);
    expect(rulerMarks(40)).toHaveLength(161);
  });

  it("stand at round numbers where there are more turns than a primary has", () => {
    expect(rulerMarks(60).map(({ text }) => text)).toEqual(["0", "10", "20", "30", "40", "50", "60"]);
  });

  it.each([1e-300, 1e-30, 1e9, 1e30, 1e300])("are few and on the scale for %d turns", (turns) => {
    const marks = rulerMarks(turns);
    expect(marks.length).toBeLessThan(20);
    for (const { turn, text } of marks) {
      expect(turn).toBeLessThanOrEqual(turns);
      expect(text === null || text.length < 7).toBe(true);
    }
    expect(new Set(marks.map(({ turn }) => turn)).size).toBe(marks.length);
  });
});
