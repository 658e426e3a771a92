/** Shows, designs and unreadable text on their way to the shelf. */
import { type Design, serialiseDesign } from "../../design/design";
import { type Show, serialiseShow } from "../../design/show";
import type { NewVersion, Seat } from "./version";

export const CAUSES = {
  otherTab: "edits of another tab, not taken",
  beside: "found beside a newer state at the start",
  unreadable: "could not be read",
  earlierBuild: "kept by an earlier build of this program",
  setAside: "set aside when another state was opened in its place",
  start: "as it was before the first edit of a session",
  editing: "while editing",
  deleted: "deleted",
} as const;

/** “before “load the example””: why a version was kept when a step took its place. */
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

/** Text that is no show, as it was found. */
export function shelvedText(text: string, shelving: Shelving): NewVersion {
  return { ...marks(shelving), kind: "show", designId: null, title: "Unreadable text", text };
}
