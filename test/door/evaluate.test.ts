import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serialiseDesign } from "../../src/design/design";
import { exampleShow, pierHallLeft, pierHallRight } from "../../src/design/examples";
import { serialiseShow } from "../../src/design/show";

const DOOR = join(import.meta.dirname, "..", "..", ".scripts", "door.mjs");

let folder: string;

function call(...given: string[]) {
  const done = spawnSync(process.execPath, [DOOR, "evaluate", ...given], {
    encoding: "utf8",
    env: { ...process.env, INIT_CWD: folder },
    maxBuffer: 1e8,
  });
  return { exitCode: done.status, output: done.stdout, complaints: done.stderr.split("\n").filter(Boolean) };
}

function write(name: string, text: string): void {
  writeFileSync(join(folder, name), text);
}

/** A key that would command a terminal first. */
const strangeKeys = Array.from({ length: 50 }, (_, index) => [`\u001b[31m${index}`, 0]);

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "door-"));
  write("left.json", serialiseDesign(pierHallLeft));
  write("right.json", serialiseDesign(pierHallRight));
  write("show.json", serialiseShow(exampleShow()));
  write("half.json", "{");
  write("strange.json", JSON.stringify({ ...pierHallLeft, ...Object.fromEntries(strangeKeys) }));
  writeFileSync(join(folder, "long.json"), Buffer.alloc(33 * 2 ** 20));
  const wrong = { ...pierHallLeft, secondary: { ...pierHallLeft.secondary, turns: -3, windingLength: 0 } };
  write("wrong.json", JSON.stringify(wrong));
  mkdirSync(join(folder, "pair"));
  write("pair/b.json", serialiseDesign(pierHallRight));
  write("pair/a.json", serialiseDesign(pierHallLeft));
  write("pair/notes.txt", "not a design");
  mkdirSync(join(folder, "empty"));
  call("left.json");
}, 60_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the headless door", () => {
  it("prints the evaluation of one design and nothing else", () => {
    const { exitCode, output, complaints } = call("left.json");
    expect(complaints).toEqual([]);
    expect(exitCode).toBe(0);
    expect(Object.keys(JSON.parse(output))).toEqual(
      expect.arrayContaining(["secondary", "topLoad", "primary", "coupling", "tank", "tuning", "findings"]),
    );
  });

  it("prints each finding with its sentence", () => {
    const { findings } = JSON.parse(call("left.json").output);
    for (const finding of findings) expect(finding.message).toMatch(/\.$/);
  });

  it("prints a list in the order of the files", () => {
    const { exitCode, output } = call("right.json", "left.json");
    expect(exitCode).toBe(0);
    expect(JSON.parse(output).map((entry: { file: string }) => entry.file)).toEqual([
      "right.json",
      "left.json",
    ]);
  });

  it("gives in a list what each design gives alone", () => {
    const [listed] = JSON.parse(call("left.json", "right.json").output);
    expect(listed.evaluation).toEqual(JSON.parse(call("left.json").output));
  });

  it("prints of a show what it prints of its two designs, left then right", () => {
    const { exitCode, output, complaints } = call("show.json");
    const designs: { evaluation: object }[] = JSON.parse(call("left.json", "right.json").output);
    expect({ exitCode, complaints }).toEqual({ exitCode: 0, complaints: [] });
    expect(JSON.parse(output)).toEqual([
      { file: "show.json", coil: "left", evaluation: designs[0].evaluation },
      { file: "show.json", coil: "right", evaluation: designs[1].evaluation },
    ]);
  });

  it("takes a folder's designs by the order of their names", () => {
    const entries: { file: string }[] = JSON.parse(call("pair").output);
    expect(entries.map((entry) => entry.file)).toEqual([join("pair", "a.json"), join("pair", "b.json")]);
  });

  it("names each wrong field on a line of its own and prints no document", () => {
    const { exitCode, output, complaints } = call("wrong.json");
    expect(exitCode).toBe(2);
    expect(output).toBe("");
    expect(complaints).toHaveLength(2);
    expect(complaints.join("\n")).toContain("secondary.turns");
    expect(complaints.join("\n")).toContain("secondary.windingLength");
  });

  it("prints the first 20 faults of a file and how many more, with nothing that commands a terminal", () => {
    const { exitCode, complaints } = call("strange.json");
    expect(exitCode).toBe(2);
    expect(complaints).toHaveLength(21);
    expect(complaints[20]).toBe("strange.json: 30 more faults follow.");
    expect(complaints.join("")).not.toContain("\u001b");
  });

  it("prints the valid designs even where others are not", () => {
    const { exitCode, output, complaints } = call("half.json", "left.json");
    const [refused, evaluated] = JSON.parse(output);
    expect(exitCode).toBe(2);
    expect(complaints).toHaveLength(1);
    expect(refused).toEqual({ file: "half.json", faults: [expect.objectContaining({ path: "" })] });
    expect(evaluated.evaluation).toBeDefined();
  });

  it.each([
    [[], "No design is named"],
    [["absent.json"], "cannot be read: there is no file of this name"],
    [["long.json"], "33.0 MiB; the limit is 32 MiB"],
    [["empty"], "holds no JSON file"],
    [["--quick", "left.json"], "--quick"],
  ])("answers %j with one line that says what is wrong", (given, said) => {
    const { exitCode, output, complaints } = call(...given);
    expect(exitCode).toBe(2);
    expect(output).toBe("");
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toContain(said);
  });
});
