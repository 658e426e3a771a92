import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { costCurve, valueAt } from "../../../src/calc/music/burstCost";
import { type CoilLoad, meanTimeCurve } from "../../../src/calc/music/coilLoad";
import { keyFrequency } from "../../../src/calc/music/equalTemperament";
import { type CoilSchedule, coilSchedule } from "../../../src/calc/music/gateSchedule";
import type { CoilLimits, Expression, Lane } from "../../../src/calc/music/lane";
import type { Score, ScoreNote } from "../../../src/calc/music/score";
import { runs } from "../../properties";
import { coilLoads } from "./coilLoads";
import { largestWindowSum } from "./largestWindowSum";
import { uniform } from "./uniform";

const LIMITS: CoilLimits = {
  longestOnTime: 180e-6,
  shortestGap: 600e-6,
  dutyLimit: 0.05,
  dutyWindow: 0.25,
  voices: 3,
  onTimeByRate: [],
  load: null,
};
const EXPRESSION: Expression = { onTime: 120e-6, kneeRate: 300, pitchExponent: 1 };

function scoreOf(notes: ScoreNote[]): Score {
  const duration = Math.max(0, ...notes.map((note) => note.end));
  return {
    parts: [{ id: "1:1", track: 1, channel: 1, name: "", percussion: false, notes, bends: [], levels: [] }],
    duration,
    tempos: [],
    reports: [],
  };
}

const TO_LEFT: Lane[] = [{ part: "1:1", coil: "left", transpose: 0, level: 1 }];

function play(notes: ScoreNote[], limits = LIMITS, expression = EXPRESSION): CoilSchedule {
  const schedule = coilSchedule(scoreOf(notes), TO_LEFT, "left", limits, expression);
  if (!schedule) throw new Error("was cancelled");
  return schedule;
}

const note = fc.record({
  start: uniform(0, 1.5),
  length: uniform(0, 0.8),
  key: fc.integer({ min: 12, max: 108 }),
  velocity: uniform(0, 1),
});
const limits = fc.record({
  longestOnTime: uniform(5e-6, 4e-4),
  shortestGap: uniform(1e-4, 3e-3),
  dutyLimit: uniform(0.002, 0.2),
  dutyWindow: uniform(0.01, 0.5),
  voices: fc.integer({ min: 1, max: 6 }),
  onTimeByRate: fc.constant<CoilLimits["onTimeByRate"]>([]),
  load: fc.constant(null),
});

/** What is asked of mains, bus and bank in the worst window, as a part of it, found pulse by pulse. */
function largestMeanPart({ starts, onTimes }: CoilSchedule["gate"], load: CoilLoad): number {
  const curve = meanTimeCurve(load);
  const times = onTimes.map((onTime) => valueAt(curve, onTime / 1e9));
  return starts.reduce((largest, last, index) => {
    let sum = 0;
    for (let each = index; each >= 0 && starts[each] > last - load.window * 1e9; each--) sum += times[each];
    return Math.max(largest, sum / load.window);
  }, 0);
}

/** Highest rise of the junction, by summing what each earlier burst has left. */
function highestRise({ starts, onTimes }: CoilSchedule["gate"], { costs, thermal }: CoilLoad): number {
  const curve = (name: "switchHeat" | "junctionRise" | "lasts") => costCurve(costs, (cost) => cost[name]);
  const [heat, rise, lasts] = [curve("switchHeat"), curve("junctionRise"), curve("lasts")];
  return starts.reduce((highest, start, index) => {
    let sum = valueAt(rise, onTimes[index] / 1e9);
    for (let each = 0; each < index; each++) {
      const since = (start - starts[each]) / 1e9 - valueAt(lasts, onTimes[each] / 1e9);
      for (const { resistance, timeConstant } of thermal)
        sum +=
          (valueAt(heat, onTimes[each] / 1e9) * resistance * Math.exp(-Math.max(0, since) / timeConstant)) /
          timeConstant;
    }
    return Math.max(highest, sum);
  }, 0);
}

describe("the gate of a coil whose bursts have a cost", () => {
  it("never passes what mains, bus, bank, junction and the current limit allow, whatever the score", () => {
    let changed = 0;
    fc.assert(
      fc.property(fc.array(note, { maxLength: 16 }), limits, coilLoads, (drawn, allowed, load) => {
        const notes = drawn.map(({ start, length, key, velocity }) => ({
          start,
          end: start + length / 4,
          key,
          velocity,
        }));
        const own = { ...allowed, dutyLimit: 0.2, load };
        const { gate, changes } = play(notes, own, { ...EXPRESSION, onTime: 300e-6 });
        changed += changes["shortened by load"] + changes["dropped for load"];
        const ceiling = load.ceilings[0].onTime * 1e9;
        expect(Array.from(gate.onTimes).filter((onTime) => onTime > ceiling)).toEqual([]);
        expect(largestMeanPart(gate, load)).toBeLessThanOrEqual(1 + 1e-9);
        const allowance = load.junctionLimit - load.caseTemperature;
        if (gate.starts.length < 250) expect(highestRise(gate, load)).toBeLessThanOrEqual(allowance + 1e-6);
      }),
      runs(200, 11),
    );
    expect(changed).toBeGreaterThan(1000);
  });
});

describe("the gate of a coil", () => {
  it("never passes a limit, and accounts for every note, whatever the score", () => {
    fc.assert(
      fc.property(fc.array(note, { maxLength: 24 }), limits, (drawn, allowed) => {
        const notes = drawn.map(({ start, length, key, velocity }) => ({
          start,
          end: start + length,
          key,
          velocity,
        }));
        const { gate, notes: outcomes } = play(notes, allowed, { ...EXPRESSION, onTime: 300e-6 });
        const gap = allowed.shortestGap * 1e9;
        const isWithin = (start: number, index: number) =>
          gate.onTimes[index] > 0 &&
          gate.onTimes[index] <= allowed.longestOnTime * 1e9 &&
          (index === 0 || start - gate.starts[index - 1] - gate.onTimes[index - 1] >= gap);
        expect(Array.from(gate.starts).filter((start, index) => !isWithin(start, index))).toEqual([]);
        expect(largestWindowSum(gate, allowed.dutyWindow * 1e9)).toBeLessThanOrEqual(
          allowed.dutyLimit * allowed.dutyWindow * 1e9,
        );
        expect(outcomes).toHaveLength(notes.length);
        expect(outcomes.reduce((sum, outcome) => sum + outcome.pulses, 0)).toBe(gate.starts.length);
        for (const { fate, reasons, pulses } of outcomes) {
          expect(fate === "played").toBe(reasons.length === 0 && pulses > 0);
          expect(fate === "dropped").toBe(pulses === 0);
        }
      }),
      runs(200, 7),
    );
  });

  it.each([31, 43, 60, 69, 84])("gives a lone note of key %i its frequency within 0.1 %%", (key) => {
    const { gate, notes } = play([{ start: 0.1, end: 1.1, key, velocity: 1 }]);
    const periods = gate.starts.length - 1;
    const rate = (periods * 1e9) / (gate.starts[periods] - gate.starts[0]);
    expect(Math.abs(rate / keyFrequency(key) - 1)).toBeLessThan(1e-3);
    expect(notes[0].fate).toBe("played");
  });

  it("makes a struck note's pulses longer than a gently played one's", () => {
    const loud = play([{ start: 0, end: 1, key: 50, velocity: 1 }]).gate.onTimes[3];
    const soft = play([{ start: 0, end: 1, key: 50, velocity: 0.4 }]).gate.onTimes[3];
    expect(soft / loud).toBeCloseTo(0.4, 3);
  });

  it("shortens the pulses above the knee so that the duty stays", () => {
    const { gate } = play([{ start: 0, end: 1, key: 69, velocity: 1 }]);
    expect(gate.onTimes[3] * keyFrequency(69)).toBeCloseTo(120e3 * 300, -3);
  });

  it("lets the weakest note give way, and of equally weak ones the oldest", () => {
    const chord = (velocities: number[]) =>
      play(
        velocities.map((velocity, index) => ({ start: index * 0.1, end: 1, key: 40 + index, velocity })),
        { ...LIMITS, voices: 2 },
      ).notes;
    expect(chord([0.9, 0.5, 0.6]).map((outcome) => outcome.reasons)).toEqual([
      [],
      ["gave way to another note"],
      [],
    ]);
    expect(chord([0.5, 0.5, 0.5])[0].reasons).toContain("gave way to another note");
    expect(chord([0.9, 0.8, 0.2])[2].fate).toBe("dropped");
  });

  it("drops what cannot sound, and says why", () => {
    const { notes } = play([{ start: 0, end: 1, key: 60, velocity: 0 }]);
    expect(notes[0]).toMatchObject({ fate: "dropped", pulses: 0, reasons: ["too short to sound"] });
  });

  it("leaves out what a lane moves beyond hearing, in time that the note's pitch does not set", () => {
    const far: Lane[] = [{ ...TO_LEFT[0], transpose: 127 }];
    const long = [{ start: 0, end: 60, key: 100, velocity: 1 }];
    const schedule = coilSchedule(scoreOf(long), far, "left", LIMITS, { ...EXPRESSION, pitchExponent: 0 });
    expect(schedule?.gate.starts).toEqual([]);
    expect(schedule?.notes[0]).toMatchObject({ fate: "dropped", reasons: ["too high to be heard"] });
  });

  it("stops where it is told to", () => {
    const many = Array.from({ length: 200 }, (_, index) => ({
      start: index / 10,
      end: index / 10 + 0.05,
      key: 50,
      velocity: 1,
    }));
    expect(coilSchedule(scoreOf(many), TO_LEFT, "left", LIMITS, EXPRESSION, () => false)).toBeNull();
  });
});
