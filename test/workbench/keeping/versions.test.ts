import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { exampleShow } from "../../../src/design/examples";
import type { Show } from "../../../src/design/show";
import { NOTHING_FOUND } from "../../../src/workbench/keeping/findAtStart";
import { newBench } from "../fakes";

const MINUTE = 60_000;

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const wait = (time = 200) => vi.advanceTimersByTimeAsync(time);

async function edited() {
  const bench = newBench();
  bench.actions.setValue("primary.tap", 5);
  await wait();
  return bench;
}

describe("a version", () => {
  it("of the show is made before the example takes its place, and is there after a start", async () => {
    const first = await edited();
    first.actions.resetToExamples();
    await wait();
    const bench = newBench(first.storage);
    const [show] = (await bench.actions.versions.list()).filter(({ kind }) => kind === "show");
    expect(show).toMatchObject({ cause: "before “load the example”", binned: false });
    expect(await bench.actions.versions.restore(show.id)).toEqual({ ok: true });
    expect(bench.open().primary.tap).toBe(5);
    bench.actions.undo();
    expect(bench.show()).toEqual(exampleShow());
  });

  it("of the present show is made before another version takes its place", async () => {
    const bench = await edited();
    bench.actions.resetToExamples();
    bench.actions.setValue("primary.tap", 7);
    await wait();
    const [show] = (await bench.actions.versions.list()).filter(({ kind }) => kind === "show");
    await bench.actions.versions.restore(show.id);
    await wait();
    const texts = [...bench.disk.versions.values()].filter(({ cause }) => cause.includes("restore the show"));
    const shows = texts.filter(({ kind }) => kind === "show").map(({ text }) => JSON.parse(text) as Show);
    expect(shows.map(({ designs }) => designs.left.primary.tap)).toEqual([7]);
  });

  it("of a deleted design lies in the bin and comes back to its place and side, in one step", async () => {
    const bench = await edited();
    bench.actions.deleteDesign("left");
    await wait();
    const [gone] = (await bench.actions.versions.list()).filter(({ binned }) => binned);
    expect(gone).toMatchObject({ kind: "design", designId: "left", cause: "deleted" });
    await bench.actions.versions.restore(gone.id);
    expect(bench.show()).toMatchObject({ order: ["left", "right"], left: "left", right: "right" });
    expect(bench.open().primary.tap).toBe(5);
    bench.actions.undo();
    expect(bench.show()).toMatchObject({ order: ["right"], left: "right", right: null });
  });

  it("of the right coil comes back as the right coil, unless another sits there by then", async () => {
    const bench = await edited();
    bench.actions.deleteDesign("right");
    await wait();
    expect(bench.show()).toMatchObject({ left: "left", right: null });
    const [gone] = (await bench.actions.versions.list()).filter(({ binned }) => binned);
    await bench.actions.versions.restore(gone.id);
    expect(bench.show()).toMatchObject({ order: ["left", "right"], left: "left", right: "right" });
    bench.actions.undo();
    bench.actions.newDesign();
    const other = bench.show().open;
    bench.actions.editShow("choose coils", (show) => ({ ...show, right: other }));
    await bench.actions.versions.restore(gone.id);
    expect(bench.show()).toMatchObject({ left: "left", right: other, open: "right" });
  });

  it("of a deleted left coil leaves the right coil at its side where a third design can stand in", async () => {
    const bench = await edited();
    bench.actions.newDesign();
    const third = bench.show().open;
    bench.actions.deleteDesign("left");
    await wait();
    expect(bench.show()).toMatchObject({ left: third, right: "right" });
    const [gone] = (await bench.actions.versions.list()).filter(({ binned }) => binned);
    await bench.actions.versions.restore(gone.id);
    expect(bench.show()).toMatchObject({ order: ["left", "right", third], left: "left", right: "right" });
  });

  it("of a design takes the place of the one of its id, which goes to the bin", async () => {
    const bench = await edited();
    bench.actions.deleteDesign("left");
    bench.actions.undo();
    bench.actions.setValue("primary.tap", 7.25);
    await wait();
    const [gone] = (await bench.actions.versions.list()).filter(({ binned }) => binned);
    await bench.actions.versions.restore(gone.id);
    await wait();
    expect(bench.show().order).toEqual(["left", "right"]);
    expect(bench.open().primary.tap).toBe(5);
    const bin = (await bench.actions.versions.list()).filter(({ binned }) => binned);
    const texts = await Promise.all(bin.map(({ id }) => bench.actions.versions.read(id)));
    expect(texts.some((version) => version?.text.includes("7.25"))).toBe(true);
  });

  it("is made at the first edit of a session, and then every ten minutes of editing", async () => {
    const first = await edited();
    const bench = newBench(first.storage);
    for (let minute = 0; minute < 31; minute++) {
      bench.actions.setValue("primary.tap", 6 + minute / 100);
      await wait(MINUTE);
    }
    const causes = (await bench.actions.versions.list()).filter(({ kind }) => kind === "design");
    expect(causes.map(({ cause }) => cause)).toEqual([
      "during editing",
      "during editing",
      "during editing",
      "before the first edit of a session",
      "before the first edit of a session",
    ]);
  });

  it("is not made of steps taken back and forth, nor of the untouched example", async () => {
    const bench = newBench();
    bench.actions.newDesign();
    bench.actions.undo();
    bench.actions.redo();
    bench.actions.undo();
    bench.actions.resetToExamples();
    await wait();
    expect(await bench.actions.versions.list()).toEqual([]);
  });

  it("is given out as a file, removed for good, and the bin is emptied", async () => {
    const bench = await edited();
    bench.actions.deleteDesign("left");
    await wait();
    const { versions } = bench.actions;
    const told = vi.fn<() => void>();
    const end = versions.listen(told);
    const [gone] = await versions.list();
    expect((await versions.file(gone.id))?.fileName).toBe("pier-hall-left-coil.coilwright-design.json");
    expect(await versions.emptyBin()).toEqual({ ok: true });
    expect(told).toHaveBeenCalled();
    expect(await versions.read(gone.id)).toBeNull();
    expect(await versions.restore(gone.id)).toMatchObject({ ok: false });
    end();
  });

  it("that cannot be read is not opened, and says so", async () => {
    const bench = newBench();
    bench.storage?.setItem("coilwright/kept/2026-01-01T00:00:00.000Z", "rubbish");
    const again = newBench(bench.storage);
    await wait();
    const [version] = await again.actions.versions.list();
    expect(version.cause).toBe("could not be read");
    expect(await again.actions.versions.restore(version.id)).toMatchObject({ ok: false });
    expect(again.show()).toEqual(exampleShow());
    expect((await again.actions.versions.file(version.id))?.text).toBe("rubbish");
  });

  it("that cannot be kept is told, and nothing else suffers", async () => {
    const bench = await edited();
    bench.disk.fail = new DOMException("broken", "UnknownError");
    bench.actions.deleteDesign("left");
    await wait();
    expect(bench.state().notices.map(({ id }) => id)).toContain("versions");
    expect(bench.show().order).toEqual(["right"]);
  });

  it("is listed nowhere where there is no database, and that is said in a sentence", async () => {
    const bench = newBench(undefined, undefined, NOTHING_FOUND);
    await expect(bench.actions.versions.list()).rejects.toThrow(/no earlier versions/);
    expect(await bench.actions.versions.emptyBin()).toMatchObject({ ok: false });
  });
});

describe("a full disk", () => {
  it("lets the oldest versions go before it refuses a save", async () => {
    const bench = await edited();
    for (let turns = 1000; turns < 1010; turns++) {
      bench.actions.setValue("secondary.turns", turns);
      bench.actions.resetToExamples();
      await wait();
    }
    const before = bench.disk.versions.size;
    // as much room as is taken now
    const texts = [
      ...bench.disk.journal.values(),
      ...[...bench.disk.versions.values()].map(({ text }) => text),
    ];
    bench.disk.room = texts.reduce((sum, text) => sum + text.length, 0) + 10;
    for (let turns = 1100; turns < 1110; turns++) {
      bench.actions.setValue("secondary.turns", turns);
      await wait();
      expect(bench.state().saveState).toBe("saved");
    }
    expect(bench.disk.versions.size).toBeLessThan(before);
    expect(newBench(bench.storage).open().secondary.turns).toBe(1109);
  });

  it("keeps half of the versions at least where what goes gives no room", async () => {
    const bench = await edited();
    for (let turns = 1000; turns < 1010; turns++) {
      bench.actions.setValue("secondary.turns", turns);
      bench.actions.resetToExamples();
      await wait();
    }
    const room = (list: Iterable<{ text: string }>) =>
      [...list].reduce((sum, { text }) => sum + text.length, 0);
    const before = room(bench.disk.versions.values());
    const largest = Math.max(...[...bench.disk.versions.values()].map(({ text }) => text.length));
    bench.disk.room = 0;
    for (let turns = 1100; turns < 1110; turns++) {
      bench.actions.setValue("secondary.turns", turns);
      await wait();
      expect(bench.state().saveState).toBe("kept");
    }
    expect(room(bench.disk.versions.values())).toBeGreaterThanOrEqual(before / 2 - largest);
    expect(newBench(bench.storage).open().secondary.turns).toBe(1109);
  });
});
