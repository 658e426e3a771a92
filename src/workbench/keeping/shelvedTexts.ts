/** Makes versions from shows, designs and unreadable text. */
import { type Design, serialiseDesign } from "../../design/design";
import { type Show, serialiseShow } from "../../design/show";
import type { NewVersion, Seat } from "./version";

export const CAUSES = {
  otherTab: "edits from another tab that were not used",
  beside: "found next to a newer state at the start",
  unreadable: "could not be read",
  earlierBuild: "stored by an earlier build of this program",
  setAside: "backed up when another state was opened instead",
  start: "before the first edit of a session",
  editing: "during editing",
  deleted: "deleted",
} as const;

/** The cause of a version that a step replaced, such as “before “load the example””. */
export function beforeStep(label: string): string {
  return `before “${label}”`;
}

export interface Shelving {
  id: string;
  /** ISO 8601 */
  at: string;
  cause: string;
  periodic?: boolean;
  offered?: boolean;
  binned?: boolean;
  seat?: Seat;
}

function marks({ id, at, cause, periodic = false, offered = false, binned = false, seat }: Shelving) {
  return { id, at, cause, periodic, offered, binned, ...(seat && { seat }) };
}

export function shelvedShow(show: Show, shelving: Shelving): NewVersion {
  return {
    ...marks(shelving),
    kind: "show",
    designId: null,
    title: show.name,
    text: serialiseShow(show),
  };
}

export function shelvedDesign(designId: string, design: Design, shelving: Shelving): NewVersion {
  return {
    ...marks(shelving),
    kind: "design",
    designId,
    title: design.title,
    text: serialiseDesign(design),
  };
}

/** A version of unreadable text, unchanged. */
export function shelvedText(text: string, shelving: Shelving): NewVersion {
  return { ...marks(shelving), kind: "show", designId: null, title: "Unreadable text", text };
}
