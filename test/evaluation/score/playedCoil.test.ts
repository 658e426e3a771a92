import { describe, expect, it } from "vitest";
import type { Score } from "../../../src/calc/music/score";
import { defaultArrangement } from "../../../src/design/arrangement";
import type { Design } from "../../../src/design/design";
import { pierHallLeft } from "../../../src/design/examples";
import { type PlayedCoil, playCoil } from "../../../src/evaluation/score/playedCoil";
import { clock, scoreFindingMessage, scoreFindings } from "../../../src/evaluation/score/scoreFindings";

/** Three voices of full notes for some seconds. */
function chords(seconds: number): Score {
  const notes = [45, 57, 64].map((key) => ({ start: 0, end: seconds, key, velocity: 1 }));
  const part = { id: "1:1", track: 1, channel: 1, name: "", percussion: false, bends: [], levels: [] };
  return { parts: [{ ...part, notes }], duration: seconds, tempos: [], reports: [] };
}

function played(design: Design, onTime = defaultArrangement.onTime, seconds = 4): PlayedCoil {
  const lanes = [{ part: "1:1", coil: "left" as const, transpose: 0, level: 1 }];
  const arrangement = { ...defaultArrangement, onTime };
  const coil = playCoil({ score: chords(seconds), lanes, arrangement }, "left", design);
  if (!coil) throw new Error("was cancelled");
  return coil;
}

const weak: Design = {
  ...pierHallLeft,
  drive: { ...pierHallLeft.drive, supply: { ...pierHallLeft.drive.supply, circuitCurrent: 6 } },
};

describe("a score played on one coil", () => {
  it("comes up to a weak mains circuit's limit and never passes it", () => {
    const { moments, findings, schedule } = played(weak, 150e-6);
    expect(schedule.changes["shortened beside others"]).toBeGreaterThan(50);
    const mains = moments.find(({ quantity }) => quantity === "mainsCurrent");
    expect(mains?.value).toBeLessThanOrEqual(6);
    expect(mains?.value).toBeGreaterThan(5);
    expect(findings.map(({ code }) => code)).not.toContain("score-mains-current-passed");
  });

  it("keeps every limit at every moment, by its own lines", () => {
    for (const design of [pierHallLeft, weak])
      for (const { used, quantity } of played(design, 300e-6).moments)
        expect(used ?? 0, quantity).toBeLessThanOrEqual(1 + 1e-9);
  });

  it("says that a limit is near from nine tenths of it", () => {
    const { moments, schedule } = played(pierHallLeft, 20e-6);
    const mains = moments.find(({ quantity }) => quantity === "mainsCurrent")!;
    const codesAt = (used: number) =>
      scoreFindings(schedule, [{ ...mains, used }], true).map(({ code }) => code);
    expect(codesAt(0.899)).not.toContain("score-mains-current-near");
    expect(codesAt(0.901)).toContain("score-mains-current-near");
    expect(codesAt(1.001)).toContain("score-mains-current-passed");
  });

  it("has nothing to say of short bursts", () => {
    const { findings } = played(pierHallLeft, 20e-6);
    expect(findings.filter(({ code }) => !code.startsWith("score-notes"))).toEqual([]);
  });

  it("says that costs are unknown where the design has no solution, and keeps the interrupter's limits", () => {
    const [toroid] = pierHallLeft.topLoad.elements;
    const elements = [{ ...toroid, outerDiameter: 0.25, centreHeight: 0.4 }];
    const { findings, line, schedule } = played({
      ...pierHallLeft,
      topLoad: { ...pierHallLeft.topLoad, elements },
    });
    expect(findings[0].code).toBe("score-load-unknown");
    expect(line.load).toBeNull();
    expect(Math.max(...schedule.gate.onTimes)).toBeLessThanOrEqual(
      pierHallLeft.interrupter.longestOnTime * 1e9,
    );
  });
});

describe("the sentences of a score's findings", () => {
  it("tell value, limit and time, end with what to change, and have no gap", () => {
    const moment = { severity: "warning" as const, where: "x", value: 17.5, limit: 16, time: 75 };
    const text = scoreFindingMessage(
      { ...moment, code: "score-mains-current-passed", quantity: "score.mainsCurrent", remedy: "change it" },
      "metric",
    );
    expect(text.replace(/\s/g, " ")).toBe(
      "Mains current passes its limit: 17.50 A where 16.00 A is allowed, 1:15 into the score. Change it.",
    );
    for (const finding of played(weak, 400e-6).findings)
      expect(scoreFindingMessage(finding, "metric")).not.toMatch(/[{}]|undefined|NaN|–/);
  });

  it("write times as minutes and seconds", () => {
    expect([0, 59.9, 60, 3600].map(clock)).toEqual(["0:00", "0:59", "1:00", "60:00"]);
  });
});
