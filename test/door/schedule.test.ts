import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { writeMidi } from "midi-file";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { firstLanes } from "../../src/calc/music/firstLanes";
import { midiScore } from "../../src/calc/music/midiScore";
import { serialiseDesign } from "../../src/design/design";
import { exampleShow, pierHallLeft, pierHallRight } from "../../src/design/examples";
import { packScore } from "../../src/design/scoreFile";
import { serialiseShow } from "../../src/design/show";
import { scheduleCommand, scheduleShow } from "../../src/door/scheduleCommand";
import { runs } from "../properties";

let folder: string;

const at = (name: string): string => join(folder, name);

function score(...channels: number[]): Uint8Array {
  const notes = channels.map((channel) => [
    { deltaTime: 0, type: "noteOn" as const, channel, noteNumber: 60 + channel, velocity: 100 },
    { deltaTime: 480, type: "noteOff" as const, channel, noteNumber: 60 + channel, velocity: 0 },
    { deltaTime: 0, type: "endOfTrack" as const, meta: true as const },
  ]);
  const header = { format: 1 as const, numTracks: channels.length, ticksPerBeat: 480 };
  return Uint8Array.from(writeMidi({ header, tracks: notes }));
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "schedule-"));
  writeFileSync(at("score.mid"), score(0, 1));
  writeFileSync(at("cut.mid"), score(0, 1).slice(0, -6));
  writeFileSync(at("left.json"), serialiseDesign(pierHallLeft));
  writeFileSync(at("right.json"), serialiseDesign(pierHallRight));
  writeFileSync(at("half.json"), "{");
});

afterAll(() => rmSync(folder, { recursive: true }));

describe("the schedule door", () => {
  it("prints rows of nine decimals in order of time for two coils", () => {
    const { exitCode, output } = scheduleCommand([at("score.mid"), at("left.json"), at("right.json")]);
    const [header, ...rows] = output.trimEnd().split("\n");
    expect(exitCode).toBe(0);
    expect(header).toBe("time,coil,onTime");
    expect(rows.every((row) => /^\d+\.\d{9},(left|right),\d+\.\d{9}$/.test(row))).toBe(true);
    const times = rows.map((row) => Number(row.split(",")[0]));
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(new Set(rows.map((row) => row.split(",")[1]))).toEqual(new Set(["left", "right"]));
  });

  describe("given a show", () => {
    const duet = { fileName: "score.mid", bytesKey: "duet" };
    const lanesOf = (bytes: Uint8Array) => {
      const reading = midiScore(bytes);
      if (!reading.ok) throw new Error(reading.message);
      return firstLanes(reading.score, true);
    };

    it("prints its own score as with separate files", async () => {
      const show = { ...exampleShow(), score: duet, lanes: lanesOf(score(0, 1)) };
      const scoreFile = await packScore(Uint8Array.from(score(0, 1)));
      writeFileSync(at("show.json"), serialiseShow(show, scoreFile));
      expect(await scheduleShow(at("show.json"))).toEqual(
        scheduleCommand([at("score.mid"), at("left.json"), at("right.json")]),
      );
      const quiet = show.lanes.map((lane) => ({ ...lane, level: 0.5, coil: "left" as const }));
      writeFileSync(at("show.json"), serialiseShow({ ...show, lanes: quiet }, scoreFile));
      const changed = await scheduleShow(at("show.json"));
      expect(changed.exitCode).toBe(0);
      expect(changed.output).not.toContain("right");
    });

    it("refuses one without its score, and a design, with one line", async () => {
      writeFileSync(at("bare.json"), serialiseShow(exampleShow()));
      writeFileSync(at("named.json"), serialiseShow({ ...exampleShow(), score: duet }));
      const damaged = { ...(await packScore(Uint8Array.from(score(0)))), length: 9 };
      writeFileSync(at("damaged.json"), serialiseShow({ ...exampleShow(), score: duet }, damaged));
      for (const [name, said] of [
        ["bare.json", "this show has no score"],
        ["named.json", "“score.mid” is named and its bytes are not enclosed"],
        ["damaged.json", "unpacks to more than the 9 bytes it states"],
        ["left.json", "this is a design, and no score is named"],
        ["half.json", "This is not JSON"],
      ]) {
        const { exitCode, output, complaints } = await scheduleShow(at(name));
        expect({ exitCode, output, lines: complaints.length }).toEqual({ exitCode: 2, output: "", lines: 1 });
        expect(complaints[0]).toContain(said);
      }
    });

    it("is refused beside a score", () => {
      const { exitCode, complaints } = scheduleCommand([at("score.mid"), at("show.json")]);
      expect(exitCode).toBe(2);
      expect(complaints[0]).toContain("name it alone");
    });
  });

  it("calls a single design left", () => {
    const { output, complaints } = scheduleCommand([at("score.mid"), at("right.json")]);
    expect(output).not.toContain("right");
    expect(complaints.some((line) => line.startsWith("left: "))).toBe(true);
  });

  it("reads a file that was cut off as far as it goes, and says so", () => {
    const { exitCode, output, complaints } = scheduleCommand([at("cut.mid"), at("left.json")]);
    expect(exitCode).toBe(0);
    expect(output.split("\n").length).toBeGreaterThan(10);
    expect(complaints.join(" ")).toMatch(/track|end/i);
  });

  it.each([
    ["a score that is missing", ["none.mid", "left.json"]],
    ["a score that is not MIDI", ["left.json", "left.json"]],
    ["a design that is not JSON", ["score.mid", "half.json"]],
  ])("refuses %s with one line", (_what, names) => {
    const { exitCode, output, complaints } = scheduleCommand(names.map(at));
    expect({ exitCode, output, lines: complaints.length }).toEqual({ exitCode: 2, output: "", lines: 1 });
  });

  it("says that its limits are computed, not measured", () => {
    const { complaints, output } = scheduleCommand([at("score.mid"), at("left.json")]);
    expect(complaints.at(-1)).toMatch(/^caution: .*computed, not measured.*local codes/);
    expect(output).not.toContain("caution");
  });

  it("answers every length at which a score may be cut, with rows or with one line", () => {
    const whole = score(0, 1);
    for (let length = 0; length < whole.length; length++) {
      writeFileSync(at("short.mid"), whole.slice(0, length));
      const { exitCode, output, complaints } = scheduleCommand([at("short.mid"), at("left.json")]);
      expect([0, 2]).toContain(exitCode);
      expect(complaints.every((line) => line.length > 0 && !/\n|NaN|undefined/.test(line))).toBe(true);
      expect(output).not.toMatch(/NaN|Infinity|-\d/);
      if (exitCode === 2) expect({ output, lines: complaints.length }).toEqual({ output: "", lines: 1 });
    }
  });

  it("ends a note that is held for hours, and says so", () => {
    const held = [
      { deltaTime: 0, type: "noteOn" as const, channel: 0, noteNumber: 60, velocity: 100 },
      { deltaTime: 480 * 2 * 3600, type: "noteOff" as const, channel: 0, noteNumber: 60, velocity: 0 },
      { deltaTime: 0, type: "endOfTrack" as const, meta: true as const },
    ];
    const header = { format: 0 as const, numTracks: 1, ticksPerBeat: 480 };
    writeFileSync(at("held.mid"), Uint8Array.from(writeMidi({ header, tracks: [held] })));
    const { output, complaints } = scheduleCommand([at("held.mid"), at("left.json")]);
    expect(complaints.join(" ")).toContain("Notes held for more than ten minutes were ended there: 1.");
    expect(Number(output.trimEnd().split("\n").at(-1)?.split(",")[0])).toBeLessThan(600);
  });

  it("answers scores with bytes changed by chance", () => {
    const whole = score(0, 1);
    const byte = fc.tuple(fc.nat(whole.length - 1), fc.nat(255));
    fc.assert(
      fc.property(fc.array(byte, { minLength: 1, maxLength: 6 }), (changes) => {
        const bytes = Uint8Array.from(whole);
        for (const [index, value] of changes) bytes[index] = value;
        writeFileSync(at("changed.mid"), bytes);
        const { exitCode, output, complaints } = scheduleCommand([at("changed.mid"), at("left.json")]);
        expect([0, 2]).toContain(exitCode);
        expect(complaints.length).toBeGreaterThan(0);
        expect(output).not.toMatch(/NaN|Infinity|undefined/);
      }),
      runs(100),
    );
  });

  it("refuses a folder, an empty file and a design with a figure of no meaning, each with its name", () => {
    writeFileSync(at("empty.mid"), "");
    const turned = { ...pierHallLeft, secondary: { ...pierHallLeft.secondary, turns: -1 } };
    writeFileSync(at("turned.json"), JSON.stringify(turned));
    const refusals: [string, string, RegExp][] = [
      [folder, at("left.json"), /cannot be read/],
      [at("empty.mid"), at("left.json"), /empty\.mid: /],
      [at("score.mid"), at("turned.json"), /turned\.json: .*turns/],
    ];
    for (const [midi, design, sentence] of refusals) {
      const { exitCode, output, complaints } = scheduleCommand([midi, design]);
      expect({ exitCode, output }).toEqual({ exitCode: 2, output: "" });
      expect(complaints.join(" ")).toMatch(sentence);
    }
  });

  it("refuses too few names, too many, and an option", () => {
    for (const given of [[], ["a.mid"], ["a.mid", "b", "c", "d"], ["--left", "b"]]) {
      expect(scheduleCommand(given).exitCode).toBe(2);
    }
  });
});
