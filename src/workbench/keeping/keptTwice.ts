/**
 * The database with copies in a second place. Every write is copied there before it counts as done. Data that the
 * database has lost, as when a browser deletes it because its files are damaged, are restored from there at the next
 * start.
 */
import { isRevision, type JournalRecord, readableRecords } from "./journal";
import type { KeepingDatabase } from "./keepingDatabase";
import type { SecondPlace } from "./secondPlace";
import { RECORD_PREFIX, VERSION_PREFIX } from "./storageKeys";
import { type NewVersion, newVersionFound, type VersionSummary } from "./version";

/** Records that are copied: the newest, and earlier ones in case a crash cut that one off. */
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

/** The copies that a new record makes obsolete: older ones, and those of a journal that was lost. */
function obsoleteCopies(names: readonly string[], { revision }: JournalRecord): string[] {
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
  // not awaited: copies that stay are removed with the next record
  void second.names().then((names) => second.remove(obsoleteCopies(names, record)));
}

async function copyVersions(second: SecondPlace, versions: readonly NewVersion[]): Promise<void> {
  await Promise.all(
    versions.map((version) => second.put(`${VERSION_PREFIX}${version.id}`, JSON.stringify(version))),
  );
}

interface VersionState {
  summaries: readonly VersionSummary[];
  /** ids of the versions that are copied */
  copied: ReadonlySet<string>;
}

async function versionStateOf(database: KeepingDatabase, second: SecondPlace): Promise<VersionState> {
  const [summaries, names] = await Promise.all([database.listVersions(), second.names()]);
  const copied = namesUnder(names, VERSION_PREFIX).map((name) => name.slice(VERSION_PREFIX.length));
  return { summaries, copied: new Set(copied) };
}

async function putBack(database: KeepingDatabase, second: SecondPlace, { summaries, copied }: VersionState) {
  const kept = new Set(summaries.map(({ id }) => id));
  for (const id of copied) {
    if (kept.has(id)) continue;
    const found = await readJson(second, `${VERSION_PREFIX}${id}`);
    if (found !== null) await database.keepVersions([newVersionFound(id, found)]);
  }
}

/** Copies versions that have no copy yet, from before there was a second place. */
async function copyRest(database: KeepingDatabase, second: SecondPlace, { summaries, copied }: VersionState) {
  for (const { id, periodic, offered } of summaries) {
    if (copied.has(id)) continue;
    const version = await database.readVersion(id);
    if (version) await copyVersions(second, [{ ...version, periodic, offered }]);
  }
}

/** Combines the two: lost data are restored when they are read, versions before they are listed. */
export function keptTwice(database: KeepingDatabase, second: SecondPlace): KeepingDatabase {
  let synchronised: Promise<void> | null = null;
  /** the newest record that the journal lacks and the copies have */
  let missing: JournalRecord | null = null;
  /** Restores the newest record to the place that lost it; after a failure, the next save does. */
  const restoreNewest = async (own: JournalRecord | undefined, copy: JournalRecord | undefined) => {
    if (missing) {
      const follows = own?.revision ?? 0;
      const write = { record: missing, follows, base: null, versions: [] };
      const { kind } = await database.writeJournal(write);
      if (kind === "written") missing = null;
    } else if (own && own.revision !== copy?.revision) await copyRecord(second, own);
  };
  const synchronise = async () => {
    try {
      const found = await versionStateOf(database, second);
      await putBack(database, second, found);
      void copyRest(database, second, found).catch(() => undefined);
    } catch {
      // retried at the next start
    }
  };
  database.listenForLoss(() => {
    synchronised = null;
  });
  return {
    ...database,
    async readJournal() {
      const [own, copies] = await Promise.all([database.readJournal(), copiedRecords(second)]);
      const newest = own[0]?.revision ?? 0;
      const newer = copies.filter(({ revision }) => revision > newest);
      missing = newer[0] ?? null;
      void restoreNewest(own[0], copies[0]).catch(() => undefined);
      return [...newer, ...own];
    },
    async writeJournal(write) {
      // in parallel: if the database fails, the next start finds the copy
      const copying = copyRecord(second, write.record);
      const outcome = await database.writeJournal({ ...write, base: write.base ?? missing });
      await copying;
      if (outcome.kind === "conflict") {
        await second.remove([nameOf(write.record)]);
      } else {
        missing = null;
        await copyVersions(second, write.versions);
      }
      return outcome;
    },
    async keepVersions(versions) {
      await database.keepVersions(versions);
      await copyVersions(second, versions);
    },
    async listVersions() {
      synchronised ??= synchronise();
      await synchronised;
      return database.listVersions();
    },
    async removeVersions(ids) {
      // copies first: otherwise a version deleted in the database would be restored from its copy
      await second.remove(ids.map((id) => `${VERSION_PREFIX}${id}`));
      await database.removeVersions(ids);
    },
  };
}
