import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { NOTHING_FOUND } from "../../../src/workbench/keeping/findAtStart";
import { watchPage } from "../../../src/workbench/keeping/page";
import { SHOW_KEY } from "../../../src/workbench/keeping/storageKeys";
import { MemoryStorage, newBench } from "../fakes";

let end: () => void = () => undefined;

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  end();
  vi.useRealTimers();
});

const wait = (time = 200) => vi.advanceTimersByTimeAsync(time);

function watched(bench: ReturnType<typeof newBench>) {
  end = watchPage(bench, window);
  return bench;
}

/** Whether the page would ask before it is left. */
function asks(): boolean {
  return !window.dispatchEvent(new Event("beforeunload", { cancelable: true }));
}

describe("leaving the page", () => {
  it("asks nothing where nothing was changed, or everything is on disk", async () => {
    const bench = watched(newBench());
    expect(asks()).toBe(false);
    bench.actions.setValue("primary.tap", 5);
    await wait();
    expect(asks()).toBe(false);
  });

  it("asks while a save is under way", async () => {
    const bench = watched(newBench());
    bench.database.byHand = true;
    bench.actions.setValue("primary.tap", 5);
    await wait();
    expect(asks()).toBe(true);
    while (bench.database.pending > 0) bench.database.next();
    await wait();
    expect(asks()).toBe(false);
  });

  it("asks where both places are full, and where there is neither", async () => {
    const full = newBench();
    const error = new DOMException("full", "QuotaExceededError");
    (full.storage as MemoryStorage).fail = error;
    full.disk.fail = error;
    for (const bench of [full, newBench(null, undefined, NOTHING_FOUND)]) {
      watched(bench);
      expect(asks()).toBe(false);
      bench.actions.setValue("primary.tap", 5);
      await wait();
      expect(asks()).toBe(true);
      expect(bench.state().notices.find(({ id }) => id === "save")?.waysOut).toContain("export the show");
      end();
    }
  });

  it("asks nothing where local storage alone keeps the show, which a closed page survives", async () => {
    const bench = watched(newBench(undefined, undefined, NOTHING_FOUND));
    bench.actions.setValue("primary.tap", 5);
    await wait();
    expect(bench.state().saveState).toBe("kept");
    expect(asks()).toBe(false);
  });

  it("asks the tab that has lost, until one of the two is chosen", async () => {
    const storage = new MemoryStorage();
    const [here, there] = [newBench(storage), newBench(storage)];
    there.actions.setValue("primary.tap", 3);
    await wait();
    watched(here);
    here.actions.setValue("primary.tap", 5);
    await wait();
    expect(asks()).toBe(true);
    await here.actions.takeWayOut("other-tab", "take the other");
    expect(asks()).toBe(false);
  });
});

describe("storage that is cleared while the page is open", () => {
  it("is told also where the database is still being closed when it is looked at", async () => {
    const bench = watched(newBench());
    bench.actions.setValue("primary.tap", 5);
    await wait();
    (bench.storage as MemoryStorage).clear();
    bench.disk.journal.clear();
    const closing = new DOMException("Connection is closing", "UnknownError");
    vi.spyOn(bench.database, "readJournal").mockRejectedValueOnce(closing).mockRejectedValueOnce(closing);
    bench.database.lose();
    await wait(2000);
    expect(bench.state().saveState).toBe("unsaved");
    expect(bench.state().notices.map(({ id }) => id)).toEqual(["cleared"]);
  });

  it("is told, asked about, and written anew by the next save", async () => {
    const bench = watched(newBench());
    bench.actions.setValue("primary.tap", 5);
    await wait();
    (bench.storage as MemoryStorage).clear();
    bench.disk.journal.clear();
    bench.database.lose();
    await wait(1200);
    expect(bench.state().saveState).toBe("unsaved");
    expect(bench.state().notices.map(({ id }) => id)).toEqual(["cleared"]);
    expect(asks()).toBe(true);
    await wait();
    bench.actions.setValue("primary.tap", 5.5);
    await wait();
    expect(bench.state()).toMatchObject({ saveState: "saved", notices: [] });
    expect(bench.storage?.getItem(SHOW_KEY)).toContain('"tap":5.5');
    expect(bench.disk.records()[0].text).toContain('"tap":5.5');
  });
});

describe("storage of which a call throws", () => {
  const refuse = () => {
    throw new DOMException("denied", "SecurityError");
  };
  it.each(["getItem", "setItem", "removeItem", "key", "length"] as const)(
    "(%s) keeps nobody from working",
    async (call) => {
      const storage = new MemoryStorage();
      storage.setItem("coilwright/backup/0", "rubbish");
      Object.defineProperty(storage, call, call === "length" ? { get: refuse } : { value: refuse });
      const bench = watched(newBench(storage));
      await wait();
      bench.actions.setValue("primary.tap", 5);
      await wait();
      expect(bench.state().saveState).toBe("saved");
      expect(asks()).toBe(false);
      expect(newBench(storage).open().primary.tap).toBe(5);
    },
  );
});

describe("lasting storage", () => {
  it("is asked for once, at the first edit", async () => {
    const bench = newBench();
    await wait();
    expect(bench.persist).not.toHaveBeenCalled();
    bench.actions.setValue("primary.tap", 5);
    bench.actions.setValue("primary.tap", 6);
    expect(bench.persist).toHaveBeenCalledTimes(1);
  });

  it("is written anew without a word where a part of it is left", async () => {
    const bench = watched(newBench());
    bench.actions.setValue("primary.tap", 5);
    await wait();
    (bench.storage as MemoryStorage).clear();
    await wait(10_500);
    expect(bench.storage?.getItem(SHOW_KEY)).toContain('"tap":5');
    bench.disk.journal.clear();
    bench.database.lose();
    await wait(1200);
    expect(bench.disk.records()[0].text).toContain('"tap":5');
    expect(bench.state()).toMatchObject({ saveState: "saved", notices: [] });
  });

  it("is left alone while it is all there", async () => {
    const bench = watched(newBench());
    bench.actions.setValue("primary.tap", 5);
    await wait();
    const before = bench.disk.records();
    await wait(60_000);
    expect(bench.disk.records()).toEqual(before);
  });
});
