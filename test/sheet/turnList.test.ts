import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { listedTurns, turnColumns } from "../../src/sheet/turnList";

const turnsUpTo = (last: number) =>
  Array.from({ length: last + 1 }, (_, turn) => ({ turn, radius: 0.1 + 0.01 * turn, height: 0.1 }));

describe("the turns on the build sheet", () => {
  it("are all listed, in one column, as long as they are few", () => {
    const { listed, step } = listedTurns(turnsUpTo(8));
    expect(step).toBe(1);
    expect(turnColumns(listed).map((column) => column.length)).toEqual([9]);
  });

  it("stand in columns before any is left out", () => {
    const { listed, step } = listedTurns(turnsUpTo(24));
    expect(step).toBe(1);
    expect(turnColumns(listed).map((column) => column.length)).toEqual([9, 9, 7]);
  });

  it("keep the first and the last turn and the page, however many there are", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), (last) => {
        const { listed } = listedTurns(turnsUpTo(last));
        const columns = turnColumns(listed);
        expect(columns.flat()).toEqual(listed);
        expect([listed[0].turn, listed[listed.length - 1].turn]).toEqual([0, last]);
        expect(columns.length).toBeLessThanOrEqual(3);
        expect(Math.max(...columns.map((column) => column.length))).toBeLessThanOrEqual(10);
      }),
    );
  });

  it("are none where the primary has no solution", () => {
    expect(turnColumns(listedTurns([]).listed)).toEqual([]);
  });
});
