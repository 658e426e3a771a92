import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { exampleShow } from "../../../src/design/examples";
import type { Show } from "../../../src/design/show";
import type { Envelope } from "../../../src/evaluation/burst/burstResults";
import { NOTHING_FOUND } from "../../../src/workbench/keeping/findAtStart";
import { ENVELOPE_VERSION } from "../../../src/workbench/keeping/loadedShow";
import { watchPage } from "../../../src/workbench/keeping/page";
import { SAVE_INTERVAL } from "../../../src/workbench/keeping/saving";
import { BACKUP_KEYS, KEPT_PREFIX, SHOW_KEY } from "../../../src/workbench/keeping/storageKeys";
import type { Disk } from "../fakeDatabase";
import { MemoryStorage, newBench } from "../fakes";

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const wait = (time = SAVE_INTERVAL) => vi.advanceTimersByTimeAsync(time);

function stored(storage: MemoryStorage): Envelope & { show: Show } {
  return JSON.parse(storage.getItem(SHOW_KEY) ?? "null");
}

function holding(text: string): MemoryStorage {
  const storage = new MemoryStorage();
  storage.setItem(SHOW_KEY, text);
  storage.writes = 0;
  return storage;
}

function setAside(storage: MemoryStorage): string[] {
  return [...storage.entries].filter(([key]) => key.startsWith(KEPT_PREFIX)).map(([, text]) => text);
}

/** The taps of the left designs of all shows among the versions. */
function shownTaps(disk: Disk): number[] {
  const shows = [...disk.versions.values()].filter(({ kind }) => kind === "show");
  return shows.map(({ text }) => (JSON.parse(text) as Show).designs.left.primary.tap);
}

function envelope(changes: object = {}): string {
  const show = exampleShow();
  const savedAt = "2026-01-01T00:00:00.000Z";
  return JSON.stringify({
    app: "coilwright",
    version: ENVELOPE_VERSION,
    revision: 7,
    savedAt,
    show,
    ...changes,
  });
}

describe("saving", () => {
  it("writes nothing at the start, the first edit at once, and those that follow in short steps", async () => {
    const bench = newBench();
    const storage = bench.storage as MemoryStorage;
    await wait(10_000);
    expect(storage.writes).toBe(0);
    expect(bench.disk.journal.size).toBe(0);
    bench.actions.setValue("primary.tap", 5);
    expect(bench.state().saveState).toBe("saving");
    expect(storage.writes).toBe(1);
    await wait(0);
    expect(bench.state().saveState).toBe("saved");
    expect(stored(storage)).toMatchObject({ app: "coilwright", version: ENVELOPE_VERSION, revision: 1 });
    bench.actions.setValue("primary.tap", 5.2);
    bench.actions.setValue("primary.tap", 5.5);
    expect(storage.writes).toBe(1);
    expect(bench.state().saveState).toBe("saving");
    await wait();
    expect(storage.writes).toBe(2);
    expect(bench.state().saveState).toBe("saved");
    expect(stored(storage).show.designs.left.primary.tap).toBe(5.5);
    expect(bench.disk.records()[0]).toEqual({ revision: 2, text: storage.getItem(SHOW_KEY) });
  });

  it("goes on however long editing goes on", async () => {
    const bench = newBench();
    for (let step = 0; step < 100; step++) {
      bench.actions.setValue("primary.tap", 4 + step / 100);
      await wait(SAVE_INTERVAL / 4);
    }
    expect(bench.disk.records()[0].revision).toBeGreaterThan(20);
    expect(bench.disk.journal.size).toBe(20);
  });

  it("says “saved” only of the newest edit, and when it is on disk", async () => {
    const bench = newBench();
    bench.database.byHand = true;
    bench.actions.setValue("primary.tap", 5);
    await wait(1_000);
    expect(bench.state().saveState).toBe("saving");
    bench.actions.setValue("primary.tap", 5.5);
    while (bench.disk.journal.size === 0) bench.database.next();
    await wait(1_000);
    expect(bench.state().saveState).toBe("saving");
    while (bench.disk.records()[0].revision < 2) bench.database.next();
    await wait(0);
    expect(bench.state().saveState).toBe("saved");
  });

  it("is found again by the next session", async () => {
    const bench = newBench();
    bench.actions.setValue("primary.tap", 5);
    bench.actions.newDesign();
    await wait();
    expect(newBench(bench.storage).show()).toEqual(bench.show());
  });

  it("keeps what was changed before a gesture, and the gesture when it is committed", async () => {
    const bench = newBench();
    const storage = bench.storage as MemoryStorage;
    bench.actions.setValue("secondary.turns", 1500);
    bench.actions.begin("move tap");
    bench.actions.change((design) => ({ ...design, primary: { ...design.primary, tap: 5 } }));
    await wait(10 * SAVE_INTERVAL);
    expect(storage.writes).toBe(1);
    bench.actions.commit();
    await wait();
    expect(stored(storage).show.designs.left).toMatchObject({
      primary: { tap: 5 },
      secondary: { turns: 1500 },
    });
  });

  it("keeps only what is committed when the page goes away within a gesture", async () => {
    const bench = newBench();
    bench.actions.setValue("secondary.turns", 1500);
    const { tap } = bench.open().primary;
    bench.actions.begin("move tap");
    bench.actions.change((design) => ({ ...design, primary: { ...design.primary, tap: 5 } }));
    bench.flush();
    expect(stored(bench.storage as MemoryStorage).show.designs.left).toMatchObject({
      primary: { tap },
      secondary: { turns: 1500 },
    });
  });

  it.each(["pagehide", "visibilitychange"])("happens at once on %s", async (event) => {
    const bench = newBench();
    const end = watchPage(bench, window);
    bench.actions.setValue("primary.tap", 5);
    vi.spyOn(document, "visibilityState", "get").mockReturnValue("hidden");
    (event === "pagehide" ? window : document).dispatchEvent(new Event(event));
    expect(stored(bench.storage as MemoryStorage).show.designs.left.primary.tap).toBe(5);
    end();
    vi.restoreAllMocks();
  });

  it("says so where the browser keeps nothing, and everything else works", async () => {
    const bench = newBench(null, undefined, NOTHING_FOUND);
    expect(bench.state()).toMatchObject({
      saveState: "failed",
      saveMessage: expect.stringContaining("export"),
      notices: [{ id: "save", severity: "error", sentence: expect.stringContaining("stores nothing") }],
    });
    bench.actions.setValue("primary.tap", 5);
    expect(bench.open().primary.tap).toBe(5);
  });
});

describe("a full storage", () => {
  it.each([
    new DOMException("full", "QuotaExceededError"),
    { name: "NS_ERROR_DOM_QUOTA_REACHED" },
    { name: "QUOTA_EXCEEDED_ERR" },
    { name: "Error", code: 22 },
    { name: "Error", code: 1014 },
  ])("is recognised as %o, loses nothing, and can be tried again", async (error) => {
    const bench = newBench();
    const storage = bench.storage as MemoryStorage;
    storage.fail = error;
    bench.disk.fail = error;
    bench.actions.setValue("primary.tap", 5);
    await wait();
    expect(bench.state().saveState).toBe("failed");
    expect(bench.state().saveMessage).toContain("full");
    expect(bench.open().primary.tap).toBe(5);
    storage.fail = null;
    bench.disk.fail = null;
    await bench.actions.takeWayOut("save", "save again");
    expect(bench.state()).toMatchObject({ saveState: "saved", saveMessage: "" });
    // the version from before the first edit found no room, which saving again does not mend
    expect(bench.state().notices.map(({ id }) => id)).toEqual(["versions"]);
    expect(stored(storage).show.designs.left.primary.tap).toBe(5);
  });

  it("of local storage alone is told, and the database keeps the show", async () => {
    const bench = newBench();
    (bench.storage as MemoryStorage).fail = new DOMException("full", "QuotaExceededError");
    bench.actions.setValue("primary.tap", 5);
    await wait();
    expect(bench.state()).toMatchObject({ saveState: "saved", notices: [{ id: "local-storage" }] });
    expect(newBench(bench.storage).open().primary.tap).toBe(5);
  });

  it("is told apart from a refusal for another reason", async () => {
    const bench = newBench();
    (bench.storage as MemoryStorage).fail = new DOMException("no", "SecurityError");
    bench.actions.setValue("primary.tap", 5);
    await wait();
    expect(bench.state().saveMessage).toContain("refused");
  });
});

describe("what is kept and cannot be read", () => {
  const { spark: _spark, ...withoutSpark } = exampleShow().designs.left;
  const wrongShow = { ...exampleShow(), designs: { ...exampleShow().designs, left: withoutSpark } };
  const nanShow = JSON.parse(JSON.stringify({ ...exampleShow(), spacing: Number.NaN }));
  it.each([
    ["corrupt JSON", '{"app":"coilwright","ver'],
    ["text of another program", '{"hello":1}'],
    ["a list", "[1]"],
    ["empty text", ""],
    ["an envelope without version", envelope({ version: undefined })],
    ["an envelope without revision", envelope({ revision: undefined })],
    ["a show without a part", envelope({ show: wrongShow })],
    ["a show whose NaN became null", envelope({ show: nanShow })],
    ["no show", envelope({ show: undefined })],
  ])("(%s) is set aside before anything is written, and told with a way out", async (_what, text) => {
    const storage = holding(text);
    const bench = newBench(storage);
    expect(setAside(storage)).toEqual([text]);
    expect(storage.getItem(SHOW_KEY)).toBe(text);
    const [notice] = bench.state().notices;
    expect(notice.sentence).toContain("backed up");
    expect(notice.waysOut).toContain("export what is kept");
    expect(bench.actions.keptFile()?.text).toBe(text);
    expect(bench.show()).toEqual(exampleShow());
    bench.actions.setValue("primary.tap", 5);
    await wait();
    expect(stored(storage).show.designs.left.primary.tap).toBe(5);
    expect(setAside(storage)).toEqual([]);
    expect([...bench.disk.versions.values()].filter((version) => version.text === text)).toHaveLength(1);
  });

  it("names each fault of an invalid show", async () => {
    const bench = newBench(holding(envelope({ show: wrongShow })));
    expect(bench.state().notices[0].details.join()).toContain("spark");
  });

  it("is set aside once, however often the page is loaded", async () => {
    const storage = holding("broken");
    newBench(storage, undefined, NOTHING_FOUND);
    newBench(storage, undefined, NOTHING_FOUND);
    expect(setAside(storage)).toEqual(["broken"]);
    newBench(storage);
    await wait();
    const { disk } = newBench(storage);
    await wait();
    expect([...disk.versions.values()].map(({ text }) => text)).toEqual(["broken"]);
  });

  it("gives way to the newest readable backup", async () => {
    const storage = holding("broken");
    const show = { ...exampleShow(), spacing: 9 };
    storage.setItem(BACKUP_KEYS[0], envelope({ revision: 3 }));
    storage.setItem(BACKUP_KEYS[1], envelope({ revision: 4, show }));
    storage.setItem(BACKUP_KEYS[2], "broken too");
    const bench = newBench(storage);
    expect(bench.show().spacing).toBe(9);
    expect(bench.state().notices[0].sentence).toContain("newest readable state");
  });

  it("is never written over when it cannot be set aside, until its owner discards it", async () => {
    const storage = holding("broken");
    storage.fail = new DOMException("full", "QuotaExceededError");
    const bench = newBench(storage, undefined, NOTHING_FOUND);
    storage.fail = null;
    bench.actions.setValue("primary.tap", 5);
    await wait();
    expect(storage.getItem(SHOW_KEY)).toBe("broken");
    expect(bench.state().saveState).toBe("unsaved");
    const told = bench.state().notices.find(({ id }) => id === "kept-show");
    expect(told?.waysOut).toEqual(["export what is kept", "discard what is kept"]);
    await bench.actions.takeWayOut("kept-show", "discard what is kept");
    expect(bench.state().saveState).toBe("kept");
    expect(stored(storage).show.designs.left.primary.tap).toBe(5);
  });

  it("stays where it is until it is on disk among the versions, where local storage has no room for it", async () => {
    const storage = holding("broken");
    storage.fail = new DOMException("full", "QuotaExceededError");
    const bench = newBench(storage);
    storage.fail = null;
    bench.database.byHand = true;
    bench.actions.setValue("primary.tap", 5);
    await wait();
    expect(storage.getItem(SHOW_KEY)).toBe("broken");
    bench.database.byHand = false;
    while (bench.database.pending > 0) bench.database.next();
    await wait();
    expect(bench.state().saveState).toBe("saved");
    expect([...bench.disk.versions.values()].map(({ text }) => text)).toContain("broken");
    bench.actions.setValue("primary.tap", 5.5);
    await wait();
    expect(stored(storage).show.designs.left.primary.tap).toBe(5.5);
  });

  it("takes declared defaults for keys that came later, however deep", async () => {
    const show = JSON.parse(JSON.stringify(exampleShow()));
    delete show.designs.left.drive.supply.sourceResistance;
    delete show.designs.left.secondary.formerWall;
    const bench = newBench(holding(envelope({ show })));
    expect(bench.state().notices).toEqual([]);
    expect(bench.open().drive.supply.sourceResistance).toBeTypeOf("number");
    expect(bench.open().secondary.formerWall).toBeTypeOf("number");
  });
});

describe("what a newer version kept", () => {
  const newer = { ...exampleShow(), version: 2, shining: true };
  it.each([
    ["envelope", envelope({ version: ENVELOPE_VERSION + 1 })],
    ["show", envelope({ show: newer })],
  ])("(a newer %s) opens read-only and is not touched", async (_what, text) => {
    const storage = holding(text);
    const bench = newBench(storage);
    const before = bench.show();
    expect(bench.state().readOnly).toContain("newer version");
    bench.actions.setValue("primary.tap", 5);
    bench.actions.begin("move tap");
    bench.actions.change((design) => ({ ...design, title: "x" }));
    bench.actions.commit();
    bench.actions.newDesign();
    expect(bench.actions.importText("{}", "x.json").ok).toBe(false);
    bench.flush();
    await wait(10_000);
    expect(bench.show()).toBe(before);
    expect([...storage.entries]).toEqual([[SHOW_KEY, text]]);
  });

  it("is set aside when its owner starts afresh", async () => {
    const text = envelope({ version: ENVELOPE_VERSION + 1 });
    const storage = holding(text);
    const bench = newBench(storage);
    await bench.actions.takeWayOut("kept-show", "start afresh");
    expect(bench.state()).toMatchObject({ readOnly: null, saveState: "saved" });
    expect(setAside(storage)).toEqual([text]);
    bench.actions.setValue("primary.tap", 5);
    await wait();
    expect(stored(storage).show.designs.left.primary.tap).toBe(5);
  });
});

describe("two tabs", () => {
  async function twoTabs() {
    const storage = new MemoryStorage();
    const [here, there] = [newBench(storage), newBench(storage)];
    there.actions.setValue("primary.tap", 3);
    await wait();
    here.actions.setValue("primary.tap", 5);
    await wait();
    return { storage, here, there };
  }

  it("never write over each other: the second one is told and its state stays unsaved", async () => {
    const { storage, here } = await twoTabs();
    expect(stored(storage).show.designs.left.primary.tap).toBe(3);
    expect(here.state().saveState).toBe("unsaved");
    expect(here.open().primary.tap).toBe(5);
    expect(here.state().notices[0].waysOut).toEqual(["take the other", "keep this"]);
  });

  it("the other one's state can be taken, as a step that can be taken back", async () => {
    const { here } = await twoTabs();
    await here.actions.takeWayOut("other-tab", "take the other");
    expect(here.open().primary.tap).toBe(3);
    expect(here.state()).toMatchObject({ saveState: "saved", notices: [] });
    here.actions.undo();
    expect(here.open().primary.tap).toBe(5);
  });

  it("this one's state can be kept, and the other one goes to the versions", async () => {
    const { storage, here } = await twoTabs();
    await here.actions.takeWayOut("other-tab", "keep this");
    expect(stored(storage)).toMatchObject({ revision: 2 });
    expect(stored(storage).show.designs.left.primary.tap).toBe(5);
    expect(shownTaps(here.disk)).toContain(3);
  });

  it("tell each other at once, also where nothing was changed here", async () => {
    const storage = new MemoryStorage();
    const [here, there] = [newBench(storage), newBench(storage)];
    const end = watchPage(here, window);
    there.actions.setValue("primary.tap", 3);
    await wait();
    window.dispatchEvent(new StorageEvent("storage", { key: "coilwright/preferences" }));
    expect(here.state().notices).toEqual([]);
    window.dispatchEvent(new StorageEvent("storage", { key: SHOW_KEY }));
    expect(here.state().notices[0].id).toBe("other-tab");
    end();
  });

  it("a state of the other one that cannot be read here is not taken and not written over", async () => {
    const { storage, here } = await twoTabs();
    const newer = envelope({ version: ENVELOPE_VERSION + 1 });
    storage.setItem(SHOW_KEY, newer);
    await here.actions.takeWayOut("other-tab", "take the other");
    here.actions.setValue("primary.tap", 5.5);
    await wait();
    expect(storage.getItem(SHOW_KEY)).toBe(newer);
    expect(here.state().saveState).toBe("unsaved");
  });
});
