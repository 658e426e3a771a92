import { describe, expect, it } from "vitest";
import { midiScore } from "../../../src/calc/music/midiScore";
import { scheduleCsv } from "../../../src/calc/music/scheduleCsv";
import { scheduleSummary } from "../../../src/calc/music/scheduleSummary";
import { defaultArrangement } from "../../../src/design/arrangement";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { playCoil } from "../../../src/evaluation/score/playedCoil";
import { gateFileJob } from "../../../src/workbench/background/gateFileJob";
import { scoreJob, transferables } from "../../../src/workbench/background/scoreJob";
import { scoreReadingJob } from "../../../src/workbench/background/scoreReadingJob";
import { bigScore } from "../../bench/bigScore";

const bytes = bigScore(80);
const unheard = { progress: () => undefined };
const reading = scoreReadingJob({ bytes, pair: true });
if (!reading.ok) throw new Error(reading.message);
const { outline, firstLanes: lanes } = reading;
const designs = { left: pierHallLeft, right: pierHallRight };
const request = { bytesKey: "a", bytes, lanes, arrangement: defaultArrangement, designs };

describe("the reading of a score", () => {
  it("tells of each part what its row shows, and no note", () => {
    expect(outline.parts).toHaveLength(8);
    expect(outline.parts[0]).toMatchObject({ id: "1:1", channel: 1, polyphony: 1 });
    expect(JSON.stringify(outline).length).toBeLessThan(2000);
    expect(outline.duration).toBeGreaterThan(2.3);
  });

  it("assigns every part at once", () => {
    expect(lanes.map(({ part }) => part)).toEqual(outline.parts.map(({ id }) => id));
    expect(new Set(lanes.map(({ coil }) => coil))).toEqual(new Set(["left", "right"]));
  });

  it("says in a sentence what is no score", () => {
    expect(scoreReadingJob({ bytes: new Uint8Array([1, 2, 3]), pair: false })).toMatchObject({
      ok: false,
      message: expect.stringMatching(/not a Standard MIDI File/),
    });
  });
});

describe("the schedules of a score", () => {
  const outcomes = scoreJob(request, unheard);

  it("are those of the calculation, in typed arrays that are handed over", () => {
    const whole = midiScore(bytes);
    if (!whole.ok) throw new Error(whole.message);
    for (const coil of ["left", "right"] as const) {
      const played = playCoil({ ...request, score: whole.score }, coil, designs[coil]);
      if (!played) throw new Error("cancelled");
      expect([...(outcomes[coil]?.gate.starts ?? [])]).toEqual(played.schedule.gate.starts);
      expect([...(outcomes[coil]?.gate.onTimes ?? [])]).toEqual(played.schedule.gate.onTimes);
      expect(outcomes[coil]?.summary).toEqual(scheduleSummary(played.schedule));
    }
    expect(transferables(outcomes)).toHaveLength(6);
  });

  it("tell how far they are", () => {
    const told: number[] = [];
    scoreJob({ ...request, bytesKey: "b" }, { progress: (done) => told.push(done) });
    expect(told.length).toBeGreaterThan(0);
    expect([...told].sort((a, b) => a - b)).toEqual(told);
    expect(told.every((done) => done >= 0 && done <= 1)).toBe(true);
  });

  it("are written as the same table that the headless door prints, and as a wave", async () => {
    const gates = { left: outcomes.left?.gate, right: outcomes.right?.gate };
    const file = { fileName: "a", gates, duration: outline.duration };
    const table = gateFileJob({ ...file, kind: "schedule" }, unheard);
    const text = scheduleCsv(gates);
    expect(table.size).toBe(text.length);
    expect(table.type).toBe("text/csv");
    expect(gateFileJob({ ...file, kind: "wave" }, unheard).size).toBeGreaterThan(48_000 * 2 * 2.3);
  });
});
