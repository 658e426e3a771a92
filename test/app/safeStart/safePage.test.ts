import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { discardProgram } from "../../../src/app/safeStart/discardProgram";
import { everythingKept } from "../../../src/app/safeStart/exportKept";
import { keptVersions } from "../../../src/app/safeStart/keptVersions";
import { openVersion } from "../../../src/app/safeStart/openVersion";
import { readDatabase, readEntries } from "../../../src/app/safeStart/readKept";
import { readStores } from "../../../src/app/safeStart/readStores";
import { showSafePage } from "../../../src/app/safeStart/safePage";
import { serialiseDesign } from "../../../src/design/design";
import { exampleShow, pierHallLeft } from "../../../src/design/examples";
import { parseShow, type Show, serialiseShow } from "../../../src/design/show";
import { readKeptText } from "../../../src/workbench/keeping/loadedShow";
import { showInRescue } from "../../../src/workbench/keeping/rescueFile";
import { secondPlace } from "../../../src/workbench/keeping/secondPlace";
import {
  JOURNAL_STORE,
  KEEPING_DATABASE,
  KEPT_PREFIX,
  RECORD_PREFIX,
  SCORE_PREFIX,
  SCORES_DATABASE,
  SECOND_PLACE,
  SHOW_KEY,
  VERSION_PREFIX,
  VERSIONS_STORE,
} from "../../../src/workbench/keeping/storageKeys";
import { FakeCaches } from "../../workbench/fakeCaches";

const NOW = new Date("2026-03-04T05:06:07.000Z");

function titled(title: string): Show {
  const show = exampleShow();
  return { ...show, name: title, designs: { ...show.designs, left: { ...pierHallLeft, title } } };
}

function envelope(show: unknown, revision: number, savedAt: string): string {
  return JSON.stringify({ app: "coilwright", version: 1, revision, savedAt, show });
}

function answered<Value>(request: IDBRequest<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** Puts values into stores of a database that is made for them, as the program makes it. */
async function fill(
  name: string,
  stores: Record<string, { keyPath?: string; values: [unknown, string?][] }>,
) {
  const opening = indexedDB.open(name, 1);
  opening.onupgradeneeded = () => {
    for (const [store, { keyPath }] of Object.entries(stores))
      opening.result.createObjectStore(store, { keyPath });
  };
  const database = await answered(opening);
  for (const [store, { values }] of Object.entries(stores))
    for (const [value, key] of values)
      await answered(database.transaction(store, "readwrite").objectStore(store).put(value, key));
  database.close();
}

const VERSION = {
  id: "v1",
  kind: "design",
  designId: "left",
  title: "Winter coil",
  at: "2026-02-01T00:00:00.000Z",
  cause: "before “delete”",
  binned: true,
  text: serialiseDesign({ ...pierHallLeft, title: "Winter coil" }),
};

async function fillEverything() {
  localStorage.setItem(SHOW_KEY, envelope(titled("Present coil"), 7, "2026-03-01T00:00:00.000Z"));
  localStorage.setItem("coilwright/backup/0", envelope(titled("Backup coil"), 3, "2026-01-01T00:00:00.000Z"));
  localStorage.setItem(`${KEPT_PREFIX}2025-12-24T00:00:00.000Z`, "{half a");
  await fill(KEEPING_DATABASE, {
    [JOURNAL_STORE]: {
      keyPath: "revision",
      values: [
        [{ revision: 9, text: envelope(titled("Journal coil"), 9, "2026-03-02T00:00:00.000Z") }],
        [{ revision: 4, text: 12 }],
      ],
    },
    [VERSIONS_STORE]: {
      keyPath: "id",
      values: [[VERSION], [{ id: "rubbish" }], [{ id: "more", text: "null" }]],
    },
  });
  await fill(SCORES_DATABASE, { bytes: { values: [[new Uint8Array([77, 84, 104, 100]), "song"]] } });
}

const found = async () => keptVersions(readEntries(), await readStores());

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  localStorage.clear();
  document.body.replaceChildren();
});

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

describe("the file of everything that was kept", () => {
  it("opens again with its newest show, which may be the journal's", async () => {
    await fillEverything();
    const read = showInRescue(JSON.parse(await everythingKept(NOW)));
    expect(read).toMatchObject({ kind: "ok", show: { name: "Journal coil" } });
  });

  it("says that there was no show, and takes no other file for one of its own", async () => {
    expect(showInRescue(JSON.parse(await everythingKept(NOW)))).toEqual({ kind: "nothing" });
    for (const other of [
      null,
      7,
      {},
      { app: "other", localStorage: {} },
      JSON.parse(serialiseDesign(pierHallLeft)),
    ])
      expect(showInRescue(other)).toBeNull();
  });

  it.each([{ databases: 5 }, { databases: [{ store: JOURNAL_STORE, records: [null, { value: 3 }] }] }])(
    "is read whatever else it holds: %j",
    async (strange) => {
      await fillEverything();
      const file = { ...JSON.parse(await everythingKept(NOW)), ...strange };
      expect(showInRescue(file)).toMatchObject({ kind: "ok", show: { name: "Present coil" } });
    },
  );
});

describe("what is kept in the browser", () => {
  it("is found in the present, the journal, the versions, the backups and what was set aside", async () => {
    await fillEverything();
    expect((await found()).map(({ origin, title }) => `${origin}: ${title}`)).toEqual([
      "present: Present coil",
      "journal: Journal coil",
      "bin, before “delete”: Winter coil",
      "backup: Backup coil",
      "set aside: Cannot be read",
      "version: Cannot be read",
    ]);
  });

  it("is nothing where nothing is kept, and no database is made by looking", async () => {
    expect(await found()).toEqual([]);
    expect(await indexedDB.databases()).toEqual([]);
  });

  it.each(["", "null", "[]", '{"show":3}', '{"show":{"designs":[1,null]}}', "\u0000", "{{{{"])(
    "may be rubbish such as %j",
    async (text) => {
      localStorage.setItem(SHOW_KEY, text);
      expect(await found()).toHaveLength(1);
      await showSafePage({ kind: "asked" });
      expect(document.body).not.toHaveTextContent(/undefined|NaN|\[object/);
    },
  );

  it("is passed over where the storage may not be read", async () => {
    vi.spyOn(Object, "keys").mockImplementationOnce(() => {
      throw new Error("denied");
    });
    expect(readEntries()).toEqual([]);
  });
});

describe("opening an earlier version", () => {
  const kept = (text: string | null) => {
    const read = readKeptText(text, parseShow);
    if (read.kind !== "ok") throw new Error(`the program cannot read it: ${read.kind}`);
    return read;
  };

  it("makes it the present one under the highest revision, in storage and journal, and sets the present aside", async () => {
    await fillEverything();
    const before = localStorage.getItem(SHOW_KEY);
    const backup = (await found()).find(({ origin }) => origin === "backup");
    expect(backup && (await openVersion(backup, NOW))).toBeNull();
    const { show, revision } = kept(localStorage.getItem(SHOW_KEY));
    expect(revision).toBe(10);
    expect(show.designs.left.title).toBe("Backup coil");
    const [journal] = (await readDatabase(KEEPING_DATABASE)).filter(({ store }) => store === JOURNAL_STORE);
    const record = journal.records.find(({ key }) => key === 10)?.value as { text: string };
    expect(record.text).toBe(localStorage.getItem(SHOW_KEY));
    expect(localStorage.getItem(`${KEPT_PREFIX}${NOW.toISOString()}`)).toBe(before);
  });

  it("puts a design beside the present ones and opens it", async () => {
    await fillEverything();
    const design = (await found()).find(({ kind }) => kind === "design");
    expect(design && (await openVersion(design, NOW))).toBeNull();
    const { show } = kept(localStorage.getItem(SHOW_KEY));
    expect(show.order).toHaveLength(3);
    expect(show.designs[show.open].title).toBe("Winter coil");
  });

  it("makes a show of a design alone where the present one cannot be read", async () => {
    await fillEverything();
    localStorage.setItem(SHOW_KEY, "{half");
    const design = (await found()).find(({ kind }) => kind === "design");
    expect(design && (await openVersion(design, NOW))).toBeNull();
    expect(Object.values(kept(localStorage.getItem(SHOW_KEY)).show.designs)).toHaveLength(1);
    expect(localStorage.getItem(`${KEPT_PREFIX}${NOW.toISOString()}`)).toBe("{half");
  });

  it("changes nothing where the present cannot be set aside, and says what to do", async () => {
    await fillEverything();
    const before = localStorage.getItem(SHOW_KEY);
    const [, journal] = await found();
    vi.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
      throw new DOMException("full", "QuotaExceededError");
    });
    expect(await openVersion(journal, NOW)).toMatch(/Export everything/);
    expect(localStorage.getItem(SHOW_KEY)).toBe(before);
  });

  it("refuses what cannot be read", async () => {
    await fillEverything();
    const broken = (await found()).find(({ kind }) => kind === "unreadable");
    expect(broken && (await openVersion(broken, NOW))).toMatch(/cannot be read/);
  });
});

describe("exporting everything", () => {
  it("gives every entry and every record, bytes as base64", async () => {
    await fillEverything();
    localStorage.setItem("another/program", "not ours");
    const all = JSON.parse(await everythingKept(NOW));
    expect(Object.keys(all.localStorage).sort()).toEqual(
      [SHOW_KEY, "coilwright/backup/0", `${KEPT_PREFIX}2025-12-24T00:00:00.000Z`].sort(),
    );
    expect(parseShow(JSON.parse(all.localStorage[SHOW_KEY]).show).ok).toBe(true);
    const stores = all.databases as { store: string; records: { key: string; value: unknown }[] }[];
    expect(stores.map(({ store, records }) => `${store} ${records.length}`).sort()).toEqual([
      "bytes 1",
      "journal 2",
      "versions 3",
    ]);
    expect(stores.find(({ store }) => store === "bytes")?.records[0].value).toEqual({ base64: btoa("MThd") });
  });
});

describe("the safe page", () => {
  it("says what happened, lists what is kept, and names each button by what it does", async () => {
    await fillEverything();
    await showSafePage({ kind: "failed", error: new TypeError("cannot read x of y") });
    expect(document.querySelector("[role=alert]")).toHaveTextContent(
      "The program failed while it was running.",
    );
    expect(document.querySelector("details")).not.toHaveAttribute("open");
    expect(document.querySelector("details")).toHaveTextContent("cannot read x of y");
    expect(document.querySelectorAll("li")).toHaveLength(6);
    const names = [...document.querySelectorAll("button")].map((button) => button.getAttribute("aria-label"));
    expect(new Set(names).size).toBe(names.length);
    expect(names.filter((name) => name?.startsWith("Open "))).toHaveLength(3);
  });

  it("exports a version as the program itself would", async () => {
    await fillEverything();
    const saved: Blob[] = [];
    URL.createObjectURL = (blob) => {
      saved.push(blob as Blob);
      return "blob:kept";
    };
    vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(() => undefined);
    await showSafePage({ kind: "asked" });
    document.querySelector<HTMLButtonElement>('[aria-label^="Export Present coil"]')?.click();
    const text = await saved[0].text();
    expect(text).toBe(serialiseShow(titled("Present coil")));
    expect(parseShow(text).ok).toBe(true);
  });

  it("shows titles as text, whatever stands in them", async () => {
    localStorage.setItem(SHOW_KEY, envelope(titled("<img src=x onerror=alert(1)>"), 1, "no date"));
    await showSafePage({ kind: "asked" });
    expect(document.querySelector("img")).toBeNull();
    expect(document.body).toHaveTextContent("<img src=x onerror=alert(1)>");
  });
});

describe("what the second place alone still holds", () => {
  const record = { revision: 12, text: envelope(titled("Copied coil"), 12, "2026-03-03T00:00:00.000Z") };

  beforeEach(async () => {
    vi.stubGlobal("caches", new FakeCaches());
    await secondPlace().put(`${RECORD_PREFIX}12`, JSON.stringify(record));
    await secondPlace().put(
      `${VERSION_PREFIX}v1`,
      JSON.stringify({ ...VERSION, title: "Copy of what is there" }),
    );
    await secondPlace().put(`${VERSION_PREFIX}v2`, JSON.stringify({ ...VERSION, id: "v2", text: "{half" }));
    await secondPlace().put(`${SCORE_PREFIX}gone`, new Uint8Array([1, 2]));
  });

  it("is listed and exported beside what the databases hold, each record once", async () => {
    await fillEverything();
    const listed = await found();
    expect(listed.filter(({ title }) => title === "Copied coil")).toHaveLength(1);
    expect(listed.filter(({ text }) => text === VERSION.text)).toHaveLength(1);
    expect(listed.some(({ kind, text }) => kind === "unreadable" && text === "{half")).toBe(true);
    const file = await everythingKept(NOW);
    expect(showInRescue(JSON.parse(file))).toMatchObject({ show: { name: "Copied coil" } });
    expect(JSON.parse(file).databases).toContainEqual(
      expect.objectContaining({
        store: "bytes",
        records: [
          { key: "song", value: { base64: "TVRoZA==" } },
          { key: "gone", value: { base64: "AQI=" } },
        ],
      }),
    );
  });

  it("is there where the databases are gone", async () => {
    expect((await found()).map(({ title }) => title)).toContain("Copied coil");
    expect(showInRescue(JSON.parse(await everythingKept(NOW)))).toMatchObject({ kind: "ok" });
  });

  it("is of a lower revision than what is opened from here, and has it as well", async () => {
    await fillEverything();
    const backup = (await found()).find(({ origin }) => origin === "backup");
    expect(backup && (await openVersion(backup, NOW))).toBeNull();
    expect(JSON.parse(localStorage.getItem(SHOW_KEY) ?? "")).toMatchObject({ revision: 13 });
    expect(await secondPlace().names()).toContain(`${RECORD_PREFIX}13`);
  });

  it("stays where the copy of the program is discarded", async () => {
    await caches.open("program");
    vi.stubGlobal("fetch", async () => new Response("here"));
    expect(await discardProgram()).toBeNull();
    expect(await caches.keys()).toEqual([SECOND_PLACE]);
  });
});
