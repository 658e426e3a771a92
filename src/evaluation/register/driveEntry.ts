import type { ResultEntry } from "./entry";

/** The part of an entry that is common to one model. */
export type Shared = Pick<ResultEntry, "source" | "validity" | "accuracy">;

type Own = Omit<ResultEntry, keyof Shared>;

/** An entry of the drive's results. */
export function driveEntry(shared: Shared, own: Own): ResultEntry {
  return { ...shared, ...own, id: `drive.${own.id}` };
}
