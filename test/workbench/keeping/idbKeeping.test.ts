// @vitest-environment node
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { findAtStart } from "../../../src/workbench/keeping/findAtStart";
import { freshLog } from "../../../src/workbench/keeping/freshLog";
import { idbKeeping } from "../../../src/workbench/keeping/idbKeeping";
import { JOURNAL_STORE, KEEPING_DATABASE, VERSIONS_STORE } from "../../../src/workbench/keeping/storageKeys";
import type { NewVersion } from "../../../src/workbench/keeping/version";
import { newVersion } from "../newVersion";

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => vi.unstubAllGlobals());

const write = (
  revision: number,
  follows: number,
  text = `text ${revision}`,
  versions: NewVersion[] = [],
) => ({
  record: { revision, text },
  base: null,
  follows,
  versions,
});

/** Opens the database as another program would, and does something to it. */
function asStranger(version: number | undefined, upgrade: (database: IDBDatabase) => void): Promise<void> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(KEEPING_DATABASE, version);
    opening.onupgradeneeded = () => upgrade(opening.result);
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      opening.result.close();
      resolve();
    };
  });
}

describe("the journal in the browser's database", () => {
  it("keeps the newest twenty records, newest first", async () => {
    const database = idbKeeping();
    for (let revision = 1; revision <= 25; revision++) {
      expect(await database.writeJournal(write(revision, revision - 1))).toEqual({ kind: "written" });
    }
    const records = await idbKeeping().readJournal();
    expect(records.map(({ revision }) => revision)).toEqual(Array.from({ length: 20 }, (_, at) => 25 - at));
    expect(records[0].text).toBe("text 25");
  });

  it("keeps fewer of what is large", async () => {
    const database = idbKeeping();
    const text = "x".repeat(1_500_000);
    for (let revision = 1; revision <= 5; revision++)
      await database.writeJournal(write(revision, revision - 1, text));
    expect(await database.readJournal()).toHaveLength(3);
  });

  it("writes nothing over a record that is not followed, and gives that record", async () => {
    const [one, other] = [idbKeeping(), idbKeeping()];
    await one.writeJournal(write(1, 0));
    const outcome = await other.writeJournal(write(1, 0, "another text", [newVersion("v")]));
    expect(outcome).toEqual({ kind: "conflict", head: { revision: 1, text: "text 1" } });
    expect(await one.listVersions()).toEqual([]);
  });

  it("lets exactly one of two that write at the same time win", async () => {
    const tabs = [idbKeeping(), idbKeeping()];
    const outcomes = await Promise.all(
      tabs.map((tab, index) => tab.writeJournal(write(1, 0, `tab ${index}`))),
    );
    expect(outcomes.map(({ kind }) => kind).sort()).toEqual(["conflict", "written"]);
  });

  it("does not stumble over what is no record, and clears it away", async () => {
    await asStranger(1, (database) => {
      const journal = database.createObjectStore(JOURNAL_STORE, { keyPath: "revision" });
      journal.put({ revision: "x", text: 5 });
      journal.put({ revision: -3 });
      journal.put({ revision: 4, text: 7 });
    });
    const database = idbKeeping();
    expect(await database.readJournal()).toEqual([]);
    expect(await database.writeJournal(write(5, 4))).toEqual({ kind: "written" });
    expect((await database.readJournal())[0]).toEqual({ revision: 5, text: "text 5" });
  });

  it.each([
    ["without a store", 1],
    ["of a higher version", 9],
  ])("is used where the database is there %s", async (_what, there) => {
    await asStranger(there, () => undefined);
    const database = idbKeeping();
    expect(await database.writeJournal(write(1, 0))).toEqual({ kind: "written" });
    expect(await idbKeeping().readJournal()).toHaveLength(1);
  });

  it("lets the database be deleted by another tab, tells of it, and opens anew", async () => {
    const database = idbKeeping();
    const lost = vi.fn<() => void>();
    database.listenForLoss(lost);
    await database.writeJournal(write(1, 0));
    await new Promise((resolve) => {
      indexedDB.deleteDatabase(KEEPING_DATABASE).onsuccess = resolve;
    });
    expect(lost).toHaveBeenCalled();
    expect(await database.readJournal()).toEqual([]);
    expect(await database.writeJournal(write(2, 1))).toEqual({ kind: "written" });
  });
});

describe("the versions in the browser's database", () => {
  it("are listed without their texts, read whole, and removed", async () => {
    const database = idbKeeping();
    await database.keepVersions([newVersion("a", { text: "first" }), newVersion("b", { text: "second" })]);
    const listed = await database.listVersions();
    expect(listed.map(({ id }) => id)).toEqual(["a", "b"]);
    expect(listed[0]).not.toHaveProperty("text");
    expect(await database.readVersion("b")).toMatchObject({ text: "second", cause: "during editing" });
    await database.removeVersions(["a"]);
    expect(await database.readVersion("a")).toBeNull();
    expect(await database.listVersions()).toHaveLength(1);
  });

  it("are known whoever wrote them, and whatever stands in them", async () => {
    await asStranger(1, (database) => {
      const versions = database.createObjectStore(VERSIONS_STORE, { keyPath: "id" });
      const { periodic: _periodic, offered: _offered, ...known } = newVersion("known", { text: "abc" });
      versions.put(known);
      versions.put({ id: "rubbish", text: { deep: [1, 2] }, at: 7 });
    });
    const listed = await idbKeeping().listVersions();
    expect(listed).toHaveLength(2);
    expect(listed[0]).toMatchObject({ id: "known", title: "Show", size: 6 });
    expect(await idbKeeping().readVersion("rubbish")).toMatchObject({ text: '{"deep":[1,2]}' });
  });

  it("are not offered twice", async () => {
    const database = idbKeeping();
    await database.keepVersions([{ ...newVersion("a"), offered: true }]);
    await database.endOffer("a");
    expect((await database.listVersions())[0].offered).toBe(false);
  });
});

describe("the browser's log", () => {
  it("is begun anew by a database that comes and goes", async () => {
    const deleted = vi.spyOn(IDBFactory.prototype, "deleteDatabase");
    await freshLog();
    expect(deleted).toHaveBeenCalledTimes(1);
    expect(await indexedDB.databases()).toEqual([]);
    deleted.mockRestore();
  });

  it.each(["open", "deleteDatabase"] as const)("is not insisted on where %s is refused", async (name) => {
    const refusing = vi.spyOn(IDBFactory.prototype, name).mockImplementation(() => {
      throw new DOMException("denied", "SecurityError");
    });
    expect(await freshLog()).toBeUndefined();
    refusing.mockRestore();
  });
});

describe("the start", () => {
  it("finds the journal", async () => {
    await idbKeeping().writeJournal(write(1, 0));
    expect(await findAtStart()).toMatchObject({ records: [{ revision: 1 }], trouble: null });
  });

  it("is not held up by a database that never answers, and says so", async () => {
    vi.stubGlobal("indexedDB", { open: () => new IDBOpenDBRequest() });
    vi.useFakeTimers();
    const finding = findAtStart();
    await vi.advanceTimersByTimeAsync(5_000);
    expect(await finding).toMatchObject({
      records: null,
      trouble: expect.stringContaining("does not respond"),
    });
    vi.useRealTimers();
  });

  it.each([
    ["there is none", () => vi.stubGlobal("indexedDB", undefined)],
    [
      "it throws",
      () =>
        vi.stubGlobal("indexedDB", {
          open: () => {
            throw new DOMException("denied", "SecurityError");
          },
        }),
    ],
    [
      "asking for it throws",
      () =>
        Object.defineProperty(globalThis, "indexedDB", {
          configurable: true,
          get: () => {
            throw new DOMException("denied", "SecurityError");
          },
        }),
    ],
  ])("goes on where %s, and says so", async (_what, arrange) => {
    arrange();
    expect(await findAtStart()).toMatchObject({ records: null, trouble: expect.stringContaining("Export") });
  });
});
