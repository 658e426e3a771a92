/**
 * The dated versions and the bin for the screen: `workbench.versions`.
 *
 *     list(): Promise<readonly VersionSummary[]>      newest first, without texts; bin items have `binned`
 *     read(id): Promise<KeptVersion | null>           with its text: a design's or a show's file
 *     restore(id): Promise<VersionOutcome>            one undo step; the replaced state is saved as a version first
 *     file(id): Promise<TextFile | null>              for export
 *     remove(id), emptyBin(): Promise<VersionOutcome> permanent
 *     listen(listener): () => void                    called whenever versions are added or removed
 *
 * `list`, `read` and `file` reject with an Error whose message is a sentence for the screen.
 */
import { type Design, fileName, parseDesign } from "../../design/design";
import type { Fault } from "../../design/document";
import { parseShow, type Show } from "../../design/show";
import type { Editing } from "../session/editing";
import { withAddedDesign, withDesign, withDesignBack, withOpened } from "../session/showEdits";
import { databaseTrouble, NO_VERSIONS } from "./findAtStart";
import type { KeepingDatabase } from "./keepingDatabase";
import type { Shelf } from "./shelf";
import type { KeptVersion, Seat, VersionSummary } from "./version";
import type { VersionMaking } from "./versionMaking";

export type VersionOutcome = { ok: true } | { ok: false; sentence: string; faults: readonly Fault[] };

export interface Versions {
  list(): Promise<readonly VersionSummary[]>;
  read(id: string): Promise<KeptVersion | null>;
  /** A design replaces the one with its id, or is added; a show replaces the show. */
  restore(id: string): Promise<VersionOutcome>;
  file(id: string): Promise<{ fileName: string; text: string } | null>;
  remove(id: string): Promise<VersionOutcome>;
  emptyBin(): Promise<VersionOutcome>;
  listen(listener: () => void): () => void;
}

/** The parts of the session that restoring needs. */
export interface Restoring {
  editShow: Editing["editShow"];
  making: Pick<VersionMaking, "showReplaced" | "designsReplaced">;
  present(): Show;
  readOnly(): string | null;
}

const GONE = "This version no longer exists.";

function refused(sentence: string, faults: readonly Fault[] = []): VersionOutcome {
  return { ok: false, sentence, faults };
}

function withRestored(show: Show, id: string, design: Design, seat: Seat | undefined): Show {
  if (Object.hasOwn(show.designs, id)) return withOpened(withDesign(show, id, design), id);
  return seat ? withDesignBack(show, id, design, seat) : withAddedDesign(show, id, design);
}

function restoreDesign(version: KeptVersion, designId: string, session: Restoring): VersionOutcome {
  const parsed = parseDesign(version.text);
  if (!parsed.ok) return refused("This version cannot be opened.", parsed.faults);
  const label = `restore ${version.title}`;
  const next = withRestored(session.present(), designId, parsed.design, version.seat);
  session.making.designsReplaced(label, next);
  session.editShow(label, () => next);
  return { ok: true };
}

function restoreShow(version: KeptVersion, session: Restoring): VersionOutcome {
  const parsed = parseShow(version.text);
  if (!parsed.ok) return refused("This version cannot be opened; its text can be exported.", parsed.faults);
  const label = `restore the show of ${version.at.slice(0, 10)}`;
  session.making.showReplaced(label, parsed.show);
  session.editShow(label, () => parsed.show);
  return { ok: true };
}

/** A database's response, or an error with a sentence for the screen. */
async function withErrorSentence<Value>(answer: Promise<Value>): Promise<Value> {
  try {
    return await answer;
  } catch (error) {
    throw new Error(databaseTrouble(error));
  }
}

async function outcomeOf(work: Promise<unknown>): Promise<VersionOutcome> {
  try {
    await work;
    return { ok: true };
  } catch (error) {
    return refused(databaseTrouble(error));
  }
}

/** The versions in a browser without a database. */
function noVersions(): Versions {
  const none = async (): Promise<never> => {
    throw new Error(NO_VERSIONS);
  };
  const refusing = async () => refused(NO_VERSIONS);
  return {
    list: none,
    read: none,
    file: none,
    restore: refusing,
    remove: refusing,
    emptyBin: refusing,
    listen: () => () => undefined,
  };
}

/** Creates the versions on their database and shelf. */
export function newVersions(
  database: KeepingDatabase | null,
  shelf: Shelf | null,
  session: Restoring,
): Versions {
  if (!database || !shelf) return noVersions();
  const list = async () => {
    const summaries = await withErrorSentence(database.listVersions());
    return [...summaries].sort((a, b) => Date.parse(b.at) - Date.parse(a.at));
  };
  const restored = (version: KeptVersion): VersionOutcome =>
    version.kind === "design" && version.designId !== null
      ? restoreDesign(version, version.designId, session)
      : restoreShow(version, session);
  return {
    list,
    read: (id) => withErrorSentence(database.readVersion(id)),
    async restore(id) {
      const locked = session.readOnly();
      if (locked !== null) return refused(locked);
      const reading = await withErrorSentence(database.readVersion(id)).catch(
        (error: Error) => error.message,
      );
      if (typeof reading === "string") return refused(reading);
      return reading ? restored(reading) : refused(GONE);
    },
    async file(id) {
      const version = await withErrorSentence(database.readVersion(id));
      return version && { fileName: fileName(version.title, version.kind), text: version.text };
    },
    remove: (id) => outcomeOf(shelf.remove([id])),
    async emptyBin() {
      return outcomeOf(
        (async () => {
          const summaries = await database.listVersions();
          await shelf.remove(summaries.filter(({ binned }) => binned).map(({ id }) => id));
        })(),
      );
    },
    listen: shelf.listen,
  };
}
