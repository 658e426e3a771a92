/** A notice to the user, with its actions. */

export type WayOut =
  /** close the notice */
  | "dismiss"
  /** save from now on; stored data are backed up first */
  | "start afresh"
  /** let the next save overwrite data that could not be backed up */
  | "discard what is kept"
  /** show what another tab has saved, in one step that can be undone */
  | "take the other"
  /** keep this tab's show; the other tab's is saved as a version */
  | "keep this"
  /** retry to save */
  | "save again"
  /** export the stored text as a file, see `keptFile` */
  | "export what is kept"
  /** undo the last edit, because a computation failed after it */
  | "take back the last change"
  /** compute again, with a longer timeout */
  | "wait longer"
  /** repeat the failed computation */
  | "compute again"
  /** export the present show as a file */
  | "export the show"
  /** restore the notice's version, in one step that can be undone */
  | "take the version";

export interface Notice {
  /** at most one notice per id is shown */
  id: string;
  severity: "error" | "warning" | "note";
  sentence: string;
  /** further lines, such as one per fault */
  details: readonly string[];
  waysOut: readonly WayOut[];
  /** callbacks of actions that the notice's own source handles */
  acts?: Partial<Record<WayOut, () => void>>;
}

/** The list with a notice added; it replaces one with the same id. */
export function withNotice(notices: readonly Notice[], notice: Notice): readonly Notice[] {
  return [...withoutNotice(notices, notice.id), notice];
}

/** The list without the notice with an id. */
export function withoutNotice(notices: readonly Notice[], id: string): readonly Notice[] {
  return notices.some((notice) => notice.id === id) ? notices.filter((notice) => notice.id !== id) : notices;
}
