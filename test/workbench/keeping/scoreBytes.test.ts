// @vitest-environment node
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { BYTES_STORE, SCORES_DATABASE } from "../../../src/workbench/keeping/storageKeys";
import { FakeCaches } from "../fakeCaches";

/** The module as a page has it after a start: with nothing in memory. */
async function freshPage() {
  vi.resetModules();
  return import("../../../src/workbench/keeping/scoreBytes");
}

beforeEach(() => vi.stubGlobal("indexedDB", new IDBFactory()));
afterEach(() => vi.unstubAllGlobals());

describe("the bytes of a score", () => {
  const bytes = Uint8Array.from([77, 84, 104, 100, 0, 255]);

  it("are there after a start", async () => {
    await (await freshPage()).keepBytes("key", bytes);
    const { keptBytes } = await freshPage();
    expect(await keptBytes("key")).toEqual(bytes);
    expect(await keptBytes("other")).toBeNull();
  });

  it("come from the second place where the database was deleted", async () => {
    vi.stubGlobal("caches", new FakeCaches());
    await (await freshPage()).keepBytes("key", bytes);
    vi.stubGlobal("indexedDB", new IDBFactory());
    expect(await (await freshPage()).keptBytes("key")).toEqual(bytes);
    expect(await (await freshPage()).keptBytes("other")).toBeNull();
    // and are put back there
    await new Promise((resolve) => setTimeout(resolve, 20));
    vi.stubGlobal("caches", new FakeCaches());
    expect(await (await freshPage()).keptBytes("key")).toEqual(bytes);
    vi.stubGlobal("indexedDB", new IDBFactory());
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(await (await freshPage()).keptBytes("key")).toEqual(bytes);
  });

  it("are found in the database that earlier builds made", async () => {
    await new Promise<void>((resolve) => {
      const opening = indexedDB.open(SCORES_DATABASE, 1);
      opening.onupgradeneeded = () => opening.result.createObjectStore(BYTES_STORE);
      opening.onsuccess = () => {
        const writing = opening.result.transaction(BYTES_STORE, "readwrite");
        writing.objectStore(BYTES_STORE).put(bytes, "score-1");
        writing.oncomplete = () => {
          opening.result.close();
          resolve();
        };
      };
    });
    expect(await (await freshPage()).keptBytes("score-1")).toEqual(bytes);
  });

  it.each([
    ["no database", undefined],
    [
      "a database that throws",
      {
        open: () => {
          throw new DOMException("denied", "SecurityError");
        },
      },
    ],
  ])("last as long as the page where there is %s, and that is told", async (_what, factory) => {
    vi.stubGlobal("indexedDB", factory);
    const { keepBytes, keptBytes, listenForRefusedBytes } = await freshPage();
    const told = vi.fn<(sentence: string) => void>();
    listenForRefusedBytes(told);
    await keepBytes("key", bytes);
    expect(told).toHaveBeenCalledExactlyOnceWith(expect.stringContaining("Export the show"));
    expect(await keptBytes("key")).toEqual(bytes);
    expect(await (await freshPage()).keptBytes("key")).toBeNull();
  });
});
