/**
 * The keeping's database with a second place beside it. What the database takes is copied there before it is
 * called kept; what the database has lost, as when a browser finds its files damaged and deletes them, comes from
 * there at the next start.
 */
import { isRevision, type JournalRecord, readableRecords } from "./journal";
import type { KeepingDatabase } from "./keepingDatabase";
import type { SecondPlace } from "./secondPlace";
import { RECORD_PREFIX, VERSION_PREFIX } from "./storageKeys";
import { type NewVersion, newVersionFound, type VersionSummary } from "./version";

/** Records that are kept there: the newest, and what is left should it be the one that a crash cut off. */
const COPIES = 3;

async function readJson(second: SecondPlace, name: string): Promise<unknown> {
  const body = await second.read(name);
  if (!body) return null;
  try {
    return JSON.parse(await body.text());
  } catch {
    return null;
  }
}

function namesUnder(names: readonly string[], prefix: string): string[] {
  return names.filter((name) => name.startsWith(prefix));
}

async function copiedRecords(second: SecondPlace): Promise<JournalRecord[]> {
  const names = namesUnder(await second.names(), RECORD_PREFIX);
  return readableRecords(await Promise.all(names.map((name) => readJson(second, name))));
}

/** The copies of records that a record makes needless: older ones, and the trace of a journal that was lost. */
function needless(names: readonly string[], { revision }: JournalRecord): string[] {
  const revisions = namesUnder(names, RECORD_PREFIX)
    .map((name) => Number(name.slice(RECORD_PREFIX.length)))
    .sort((a, b) => b - a);
  const kept = revisions.filter((each) => isRevision(each) && each <= revision).slice(0, COPIES);
  return revisions.filter((each) => !kept.includes(each)).map((each) => `${RECORD_PREFIX}${each}`);
}

function nameOf({ revision }: JournalRecord): string {
  return `${RECORD_PREFIX}${revision}`;
}

async function copyRecord(second: SecondPlace, record: JournalRecord): Promise<void> {
  await second.put(nameOf(record), JSON.stringify(record));
  // nobody waits for that: what stays is cleared away with the next
  void second.names().then((names) => second.remove(needless(names, record)));
}

async function copyVersions(second: SecondPlace, versions: readonly NewVersion[]): Promise<void> {
  await Promise.all(
    versions.map((version) => second.put(`${VERSION_PREFIX}${version.id}`, JSON.stringify(version))),
  );
}

interface Level {
  summaries: readonly VersionSummary[];
  /** ids of the versions that are copied */
  copied: ReadonlySet<string>;
}

async function levelOf(database: KeepingDatabase, second: SecondPlace): Promise<Level> {
  const [summaries, names] = await Promise.all([database.listVersions(), second.names()]);
  const copied = namesUnder(names, VERSION_PREFIX).map((name) => name.slice(VERSION_PREFIX.length));
  return { summaries, copied: new Set(copied) };
}

async function putBack(database: KeepingDatabase, second: SecondPlace, { summaries, copied }: Level) {
  const kept = new Set(summaries.map(({ id }) => id));
  for (const id of copied) {
    if (kept.has(id)) continue;
    const found = await readJson(second, `${VERSION_PREFIX}${id}`);
    if (found !== null) await database.keepVersions([newVersionFound(id, found)]);
  }
}

/** Copies what was kept before there was a second place. */
async function copyRest(database: KeepingDatabase, second: SecondPlace, { summaries, copied }: Level) {
  for (const { id, periodic, offered } of summaries) {
    if (copied.has(id)) continue;
    const version = await database.readVersion(id);
    if (version) await copyVersions(second, [{ ...version, periodic, offered }]);
  }
}

/** Makes the two one: whatever is read is put back where it was lost, versions before they are listed. */
export function keptTwice(database: KeepingDatabase, second: SecondPlace): KeepingDatabase {
  let levelled: Promise<void> | null = null;
  /** what the journal has not, though what is read grew from it */
  let lacking: JournalRecord | null = null;
  /** Puts the newest record back into the one that has lost it; where it refuses, the next save does. */
  const mend = async (own: JournalRecord | undefined, copy: JournalRecord | undefined) => {
    if (lacking) {
      const follows = own?.revision ?? 0;
      const write = { record: lacking, follows, base: null, versions: [] };
      const { kind } = await database.writeJournal(write);
      if (kind === "written") lacking = null;
    } else if (own && own.revision !== copy?.revision) await copyRecord(second, own);
  };
  const level = async () => {
    try {
      const found = await levelOf(database, second);
      await putBack(database, second, found);
      void copyRest(database, second, found).catch(() => undefined);
    } catch {
      // what is not levelled now is so at the next start
    }
  };
  database.listenForLoss(() => {
    levelled = null;
  });
  return {
    ...database,
    async readJournal() {
      const [own, copies] = await Promise.all([database.readJournal(), copiedRecords(second)]);
      const newest = own[0]?.revision ?? 0;
      const newer = copies.filter(({ revision }) => revision > newest);
      lacking = newer[0] ?? null;
      void mend(own[0], copies[0]).catch(() => undefined);
      return [...newer, ...own];
    },
    async writeJournal(write) {
      // both at once: where the database refuses, the copy is what the next start finds
      const copying = copyRecord(second, write.record);
      const outcome = await database.writeJournal({ ...write, base: write.base ?? lacking });
      await copying;
      if (outcome.kind === "conflict") {
        await second.remove([nameOf(write.record)]);
      } else {
        lacking = null;
        await copyVersions(second, write.versions);
      }
      return outcome;
    },
    async keepVersions(versions) {
      await database.keepVersions(versions);
      await copyVersions(second, versions);
    },
    async listVersions() {
      levelled ??= level();
      await levelled;
      return database.listVersions();
    },
    async removeVersions(ids) {
      // first here: what the database alone holds is no loss, and what this place alone holds comes back
      await second.remove(ids.map((id) => `${VERSION_PREFIX}${id}`));
      await database.removeVersions(ids);
    },
  };
}
