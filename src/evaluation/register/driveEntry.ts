import type { Dimension } from "../../units/dimension";
import type { ResultEntry } from "./entry";

type Own = Pick<ResultEntry, "label" | "symbol" | "words" | "formula" | "inputs"> & {
  id: string;
  dimension: Dimension;
};

/** What entries of one model have in common. */
export type Shared = Pick<ResultEntry, "source" | "validity" | "accuracy">;

/** An entry of the drive's results. */
export function driveEntry(shared: Shared, own: Own): ResultEntry {
  return { ...shared, ...own, id: `drive.${own.id}` };
}
