import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serialiseDesign } from "../../src/design/design";
import { pierHallLeft } from "../../src/design/examples";
import { asksForNetlist, netlistCommand } from "../../src/door/netlistCommand";

let folder: string;

function write(name: string, design: object): string {
  const file = join(folder, name);
  writeFileSync(file, JSON.stringify(design));
  return file;
}

function call(...given: string[]) {
  return netlistCommand(["--netlist", "response", ...given]);
}

let left: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "netlist-"));
  left = join(folder, "left.json");
  writeFileSync(left, serialiseDesign(pierHallLeft));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the netlist at the door", () => {
  it("is written without the spark unless it is asked for", () => {
    const [unloaded, loaded] = [call(left), call("--loaded", left)];
    expect(unloaded).toMatchObject({ exitCode: 0, complaints: [] });
    expect(loaded).toMatchObject({ exitCode: 0, complaints: [] });
    expect(unloaded.output).not.toContain("Rspark");
    expect(loaded.output).toContain("Rspark");
  });

  it("bears the design's title and one linear sweep, and no control block", () => {
    const { output } = call(left);
    expect(output.split("\n")[0]).toContain(pierHallLeft.title);
    expect(output.match(/^\.ac lin /gm)).toHaveLength(1);
    expect(output).not.toContain(".control");
    expect(output).toMatch(/\.end\n$/);
  });

  it("takes its options in any order", () => {
    expect(netlistCommand([left, "--loaded", "--netlist", "response"])).toEqual(call("--loaded", left));
  });

  it("wires the spark as the design has it", () => {
    const parallel = write("parallel.json", {
      ...pierHallLeft,
      spark: { ...pierHallLeft.spark, topology: "parallel" },
    });
    expect(call("--loaded", parallel).output).toMatch(/^Rspark top 0 /m);
  });

  it("is written of one burst as of the response, for the whole on-time", () => {
    const { exitCode, output, complaints } = netlistCommand(["--netlist", "burst", left]);
    expect({ exitCode, complaints }).toEqual({ exitCode: 0, complaints: [] });
    expect(output.split("\n")[0]).toContain(pierHallLeft.title);
    expect(output).toContain("Rspark");
    expect(output).toContain("Von on 0 PWL(0 1 1.200000000e-4 1 ");
    expect(output).toMatch(/^\.tran .+ uic$/m);
  });

  it("says what of a burst is not in it", () => {
    const limited = write("limited.json", {
      ...pierHallLeft,
      drive: { ...pierHallLeft.drive, overCurrentLimit: 300 },
      spark: { ...pierHallLeft.spark, growth: "with the burst" },
    });
    const { exitCode, complaints } = netlistCommand(["--netlist", "burst", limited]);
    expect(exitCode).toBe(0);
    expect(complaints[0]).toContain("limit");
    expect(complaints[1]).toContain("grow");
    const half = write("half.json", {
      ...pierHallLeft,
      drive: { ...pierHallLeft.drive, overCurrentLimit: 300, overCurrentAction: "end half cycle" },
    });
    expect(netlistCommand(["--netlist", "burst", half]).complaints[0]).toContain("grows larger");
  });

  it("says so where a design has no spark to load it", () => {
    const bare = write("bare.json", { ...pierHallLeft, spark: { ...pierHallLeft.spark, length: 0 } });
    const { exitCode, output, complaints } = call("--loaded", bare);
    expect(exitCode).toBe(0);
    expect(output).not.toContain("Rspark");
    expect(complaints[0]).toContain("no spark load");
  });

  it.each([
    ["several files", () => call(left, left), "several files"],
    ["a folder", () => call(folder), "is a folder"],
    ["no file", () => call(), "No design is named"],
    ["another option", () => call("--fast", left), "--fast is not known"],
    ["another netlist", () => netlistCommand(["--netlist", "noise", left]), "“noise” is not known"],
    ["no kind", () => netlistCommand([left, "--netlist"]), "is not known"],
    ["a load without a netlist", () => netlistCommand(["--loaded", left]), "goes with --netlist"],
  ])("refuses %s with one sentence", (_, refuse, words) => {
    const { exitCode, output, complaints } = refuse();
    expect(exitCode).toBe(2);
    expect(output).toBe("");
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toContain(words);
  });

  it("names each wrong field of a file that is no design", () => {
    const wrong = write("wrong.json", {
      ...pierHallLeft,
      secondary: { ...pierHallLeft.secondary, turns: -3, windingLength: 0 },
    });
    const { exitCode, output, complaints } = call(wrong);
    expect(exitCode).toBe(2);
    expect(output).toBe("");
    expect(complaints).toHaveLength(2);
  });

  it("gives the design's errors where its network has no solution", () => {
    const past = write("past.json", { ...pierHallLeft, primary: { ...pierHallLeft.primary, tap: 90 } });
    const { exitCode, output, complaints } = call(past);
    expect(exitCode).toBe(2);
    expect(output).toBe("");
    expect(complaints[0]).toContain("no solution");
    expect(complaints.length).toBeGreaterThan(1);
  });

  it("is asked for by its own options alone", () => {
    expect(asksForNetlist(["a.json"])).toBe(false);
    expect(asksForNetlist(["--netlist", "response", "a.json"])).toBe(true);
  });
});
