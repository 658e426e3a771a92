import { describe, expect, it } from "vitest";
import type { NoteFate, NoteOutcome } from "../../../src/calc/music/gateSchedule";
import { noteRoll, ROLL_HEIGHT, ROLL_WIDTH } from "../../../src/calc/music/noteRoll";

function note(key: number, start: number, end: number, fate: NoteFate = "played"): NoteOutcome {
  return { part: "1:1", key, start, end, fate, reasons: [], pulses: 1 };
}

/** Part of the pixels that are inked. */
function inked(pixels: Uint8Array): number {
  return pixels.reduce((sum, pixel) => sum + pixel / 255, 0) / pixels.length;
}

describe("the roll of notes", () => {
  it("has its own size, whatever it is of", () => {
    for (const notes of [
      [],
      [note(60, 0, 1)],
      Array.from({ length: 3000 }, (_, at) => note(at % 128, at, at + 9)),
    ])
      expect(noteRoll(notes, 3000)).toHaveLength(ROLL_WIDTH * ROLL_HEIGHT);
  });

  it("is blank without notes", () => {
    expect(inked(noteRoll([], 1))).toBe(0);
  });

  it("draws a note where it sounds: its time from left to right, higher keys higher", () => {
    const pixels = noteRoll([note(72, 0, 1), note(60, 2, 3)], 4);
    const inkOf = (left: number, right: number, top: number, bottom: number) => {
      let ink = 0;
      for (let y = top; y < bottom; y++)
        for (let x = left; x < right; x++) ink += pixels[y * ROLL_WIDTH + x] / 255;
      return ink;
    };
    const [quarter, half] = [ROLL_WIDTH / 4, ROLL_HEIGHT / 2];
    expect(inkOf(0, quarter, 0, half)).toBeGreaterThan(0.9 * quarter * 15);
    expect(inkOf(2 * quarter, 3 * quarter, half, ROLL_HEIGHT)).toBeGreaterThan(0.9 * quarter * 15);
    expect(inkOf(quarter, 2 * quarter, 0, ROLL_HEIGHT)).toBe(0);
    expect(inkOf(3 * quarter, ROLL_WIDTH, 0, ROLL_HEIGHT)).toBe(0);
  });

  it("tells the fates apart by more than colour: filled, half filled, crossed through", () => {
    const [played, shortened, dropped] = (["played", "shortened", "dropped"] as const).map((fate) =>
      inked(noteRoll([note(60, 0, 1, fate)], 1)),
    );
    expect(shortened).toBeLessThan(0.7 * played);
    expect(dropped).toBeLessThan(0.7 * shortened);
    expect(dropped).toBeGreaterThan(0);
  });

  it("draws a dropped note as a closed outline of two pixels, crossed from the lower left to the upper right", () => {
    const pixels = noteRoll([note(60, 0.25, 0.75, "dropped")], 1);
    const columnsOf = (y: number) => {
      const columns: number[] = [];
      for (let x = 0; x < ROLL_WIDTH; x++) if (pixels[y * ROLL_WIDTH + x] > 0) columns.push(x);
      return columns;
    };
    const rows = Array.from({ length: ROLL_HEIGHT }, (_, y) => columnsOf(y)).filter(
      ({ length }) => length > 0,
    );
    const [left, right] = [rows[0][0], rows[0][rows[0].length - 1]];
    for (const edge of [...rows.slice(0, 2), ...rows.slice(-2)]) expect(edge).toHaveLength(right - left + 1);
    const crossed = rows.slice(2, -2).map((columns) => {
      expect([...columns.slice(0, 2), ...columns.slice(-2)]).toEqual([left, left + 1, right - 1, right]);
      return columns.slice(2, -2);
    });
    expect(crossed).toHaveLength(16);
    crossed.slice(1).forEach((below, at) => {
      const above = crossed[at];
      expect(above[0]).toBeGreaterThan(below[0]);
      expect(above[0]).toBeLessThanOrEqual(below[below.length - 1] + 1); // no hole in the line
    });
  });

  it("keeps the shortest note in sight, and one at the very end inside", () => {
    expect(inked(noteRoll([note(60, 0.5, 0.5)], 1000))).toBeGreaterThan(0);
    expect(inked(noteRoll([note(127, 1000, 1000), note(0, 999.99, 1000)], 1000))).toBeGreaterThan(0);
  });
});
