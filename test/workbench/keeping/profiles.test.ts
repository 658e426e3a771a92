import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Show } from "../../../src/design/show";
import {
  BACKUP_KEYS,
  KEPT_PREFIX,
  PREFERENCES_KEY,
  SHOW_KEY,
} from "../../../src/workbench/keeping/storageKeys";
import type { NewVersion } from "../../../src/workbench/keeping/version";
import { createPreferences } from "../../../src/workbench/session/preferences";
import { Disk, FakeDatabase } from "../fakeDatabase";
import { MemoryStorage, newBench } from "../fakes";

/** What a browser held after a session, as a build of its time left it; made by that build, never by hand. */
interface Profile {
  what: string;
  localStorage: Record<string, string>;
  journal?: { revision: number; text: string }[];
  versions?: NewVersion[];
}

const FOLDER = join(import.meta.dirname, "..", "..", "reference");
const profiles = readdirSync(FOLDER)
  .filter((name) => /^profile-\d+\.json$/.test(name))
  .map((name) => ({ name, profile: JSON.parse(readFileSync(join(FOLDER, name), "utf8")) as Profile }));

function browserOf({ localStorage, journal = [], versions = [] }: Profile) {
  const storage = new MemoryStorage();
  for (const [key, text] of Object.entries(localStorage)) storage.entries.set(key, text);
  const disk = new Disk();
  for (const { revision, text } of journal) disk.journal.set(revision, text);
  for (const version of versions) disk.versions.set(version.id, version);
  const open = () => newBench(storage, undefined, new FakeDatabase(disk).found());
  return { storage, disk, open };
}

/** A turn of the event loop and more: what a start does beside the show is done. */
const quiet = () => new Promise((resolve) => setTimeout(resolve, 20));

describe.each(profiles)("the profile of $name", ({ profile }) => {
  const kept = JSON.parse(profile.localStorage[SHOW_KEY]).show as Show;

  it("opens with its show: designs, line-up, lanes and score", async () => {
    const bench = browserOf(profile).open();
    expect(bench.show()).toMatchObject(kept);
    expect(bench.show().lineUp.candidates).toHaveLength(2);
    expect(bench.show().lanes.length).toBeGreaterThan(0);
    expect(bench.state()).toMatchObject({ notices: [], readOnly: null });
    await bench.settled();
    expect(bench.state().saveState).toBe("saved");
    await quiet();
    expect(bench.state().notices).toEqual([]);
  });

  it("keeps what lay beside the show, as versions", async () => {
    const { storage, disk, open } = browserOf(profile);
    open();
    await quiet();
    const texts = [...disk.versions.values()].map(({ text }) => text);
    for (const key of BACKUP_KEYS.filter((each) => each in profile.localStorage)) {
      const { show } = JSON.parse(profile.localStorage[key]) as { show: Show };
      expect(texts.map((text) => text.startsWith("{\n") && JSON.parse(text))).toContainEqual(
        expect.objectContaining({ order: show.order, designs: show.designs }),
      );
    }
    const aside = Object.entries(profile.localStorage).filter(([key]) => key.startsWith(KEPT_PREFIX));
    for (const [, text] of aside) expect(texts).toContain(text);
    for (const { id } of profile.versions ?? []) expect(disk.versions.has(id)).toBe(true);
    const left = [...storage.entries.keys()].sort();
    expect(left).toEqual([PREFERENCES_KEY, SHOW_KEY]);
  });

  it("is brought into the versions once, however often it opens", async () => {
    const { disk, open } = browserOf(profile);
    open();
    await quiet();
    const count = disk.versions.size;
    open();
    await quiet();
    expect(disk.versions.size).toBe(count);
  });

  it("goes on where it was", async () => {
    const { open } = browserOf(profile);
    const bench = open();
    bench.actions.setValue("secondary.turns", 1111);
    await bench.settled();
    const again = open();
    expect(again.open().secondary.turns).toBe(1111);
    expect(again.show().order).toEqual(kept.order);
  });

  it("keeps its preferences", () => {
    const preferences = createPreferences(browserOf(profile).storage, () => new Date()).getState();
    expect(preferences).toMatchObject(JSON.parse(profile.localStorage[PREFERENCES_KEY]));
  });
});
