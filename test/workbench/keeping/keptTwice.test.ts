// @vitest-environment node
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { KeepingDatabase } from "../../../src/workbench/keeping/keepingDatabase";
import { keptTwice } from "../../../src/workbench/keeping/keptTwice";
import { secondPlace } from "../../../src/workbench/keeping/secondPlace";
import { SECOND_PLACE } from "../../../src/workbench/keeping/storageKeys";
import type { NewVersion } from "../../../src/workbench/keeping/version";
import { FakeCaches } from "../fakeCaches";
import { Disk, FakeDatabase } from "../fakeDatabase";
import { newVersion } from "../newVersion";

let caches: FakeCaches;
beforeEach(() => {
  caches = new FakeCaches();
  vi.stubGlobal("caches", caches);
});
afterEach(() => vi.unstubAllGlobals());

/** A page on a disk; a new disk is what a browser has that has deleted its databases. */
function page(disk = new Disk()) {
  const own = new FakeDatabase(disk);
  return { disk, own, kept: keptTwice(own, secondPlace()) };
}

const save = (database: KeepingDatabase, revision: number, versions: NewVersion[] = []) =>
  database.writeJournal({
    record: { revision, text: `text ${revision}` },
    base: null,
    follows: revision - 1,
    versions,
  });

const revisionsOf = async (database: KeepingDatabase) =>
  (await database.readJournal()).map(({ revision }) => revision);

const idsOf = async (database: KeepingDatabase) => (await database.listVersions()).map(({ id }) => id);

const version = (id: string, parts: Partial<NewVersion> = {}) =>
  newVersion(id, { text: `text of ${id}`, ...parts });

/** What is done without anybody waiting for it is done. */
const quiet = () => new Promise((resolve) => setTimeout(resolve, 20));

describe("a database that was deleted", () => {
  it("gives back its newest record, and goes on from there", async () => {
    const before = page();
    for (let revision = 1; revision <= 5; revision++) await save(before.kept, revision);
    await quiet();
    const after = page();
    expect(await after.kept.readJournal()).toMatchObject([
      { revision: 5, text: "text 5" },
      { revision: 4 },
      { revision: 3 },
    ]);
    expect(await save(after.kept, 6)).toEqual({ kind: "written" });
    await save(after.kept, 7);
    // with the one that it grew from
    expect(await revisionsOf(after.own)).toEqual([7, 6, 5]);
  });

  it("gives back its versions as they were, marks included, and stays without those that were removed", async () => {
    const before = page();
    const kept = version("kept", { offered: true, periodic: false, cause: "deleted", binned: true });
    await before.kept.keepVersions([kept, version("gone")]);
    await save(before.kept, 1, [version("of a save")]);
    await before.kept.removeVersions(["gone"]);
    const after = page();
    expect((await idsOf(after.kept)).sort()).toEqual(["kept", "of a save"]);
    expect(after.disk.versions.get("kept")).toEqual(kept);
    expect(await after.kept.readVersion("kept")).toMatchObject({ text: "text of kept", cause: "deleted" });
  });

  it("gives back what was kept before there was a second place", async () => {
    const old = page();
    old.disk.versions.set("old", version("old"));
    expect(await idsOf(old.kept)).toEqual(["old"]);
    await quiet();
    expect(await idsOf(page().kept)).toEqual(["old"]);
  });

  it("is not asked to take rubbish back", async () => {
    await secondPlace().put("record/7", "{half a");
    await secondPlace().put("record/8", JSON.stringify({ revision: "8", text: 8 }));
    await secondPlace().put("version/broken", "[1,");
    await secondPlace().put("version/strange", "{}");
    const { kept } = page();
    expect(await kept.readJournal()).toEqual([]);
    expect(await idsOf(kept)).toEqual(["strange"]);
  });
});

describe("what one of the two has lost", () => {
  it("is put back by reading alone, into the database", async () => {
    await save(page().kept, 1);
    const after = page();
    await after.kept.readJournal();
    await quiet();
    expect(await revisionsOf(after.own)).toEqual([1]);
  });

  it("is put back by reading alone, into the second place", async () => {
    const { kept } = page();
    await save(kept, 1);
    caches.held.clear();
    await kept.readJournal();
    await quiet();
    expect(caches.addresses(SECOND_PLACE)).toEqual(["/kept/record%2F1"]);
  });

  it("is listed again of versions whose database was closed and deleted while open", async () => {
    const { kept, own, disk } = page();
    await kept.keepVersions([version("a")]);
    expect(await idsOf(kept)).toEqual(["a"]);
    disk.versions.clear();
    own.lose();
    expect(await idsOf(kept)).toEqual(["a"]);
  });
});

describe("the second place", () => {
  it("holds the newest three records", async () => {
    const { kept } = page();
    for (let revision = 1; revision <= 6; revision++) await save(kept, revision);
    await quiet();
    expect(caches.addresses(SECOND_PLACE).sort()).toEqual([
      "/kept/record%2F4",
      "/kept/record%2F5",
      "/kept/record%2F6",
    ]);
  });

  it("gives nothing of a tab that has lost", async () => {
    const { kept, disk } = page();
    disk.journal.set(9, "of another tab");
    expect(await save(kept, 4)).toMatchObject({ kind: "conflict" });
    await quiet();
    expect(caches.addresses(SECOND_PLACE)).toEqual([]);
  });

  it("has what the database refuses", async () => {
    const { kept, disk } = page();
    await save(kept, 1);
    disk.fail = new DOMException("full", "QuotaExceededError");
    await expect(save(kept, 2)).rejects.toThrow("full");
    await quiet();
    expect(await revisionsOf(page(disk).kept)).toEqual([2, 1]);
  });

  it("does not outlive a journal that began anew without it", async () => {
    await secondPlace().put("record/50", JSON.stringify({ revision: 50, text: "of a lost journal" }));
    const { kept } = page();
    await save(kept, 1);
    await quiet();
    expect(await revisionsOf(kept)).toEqual([1]);
  });

  it.each([
    ["refuses", () => caches],
    ["is not there", () => undefined],
    ["is forbidden", () => null],
  ])("is done without where it %s", async (_what, place) => {
    caches.fail = new DOMException("denied", "SecurityError");
    vi.stubGlobal("caches", place());
    const { kept } = page();
    expect(await save(kept, 1, [version("a")])).toEqual({ kind: "written" });
    expect(await revisionsOf(kept)).toEqual([1]);
    expect(await idsOf(kept)).toEqual(["a"]);
    await kept.removeVersions(["a"]);
    expect(await idsOf(kept)).toEqual([]);
  });

  it("holds nobody up who waits for it in vain", async () => {
    vi.stubGlobal("caches", { open: () => new Promise(() => undefined) });
    vi.useFakeTimers();
    const saving = save(page().kept, 1);
    await vi.advanceTimersByTimeAsync(2_000);
    expect(await saving).toEqual({ kind: "written" });
    vi.useRealTimers();
  });
});
