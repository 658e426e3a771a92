/** Something to be told once, with the ways out of it. */

export type WayOut =
  /** take the notice away */
  | "dismiss"
  /** save from now on; what is stored is set aside first */
  | "start afresh"
  /** let the next save write over what could not be set aside */
  | "discard what is kept"
  /** show what another tab has saved, as one step that can be taken back */
  | "take the other"
  /** keep what this tab shows; what the other one saved goes to the versions */
  | "keep this"
  /** try again to save */
  | "save again"
  /** give out the stored text as a file, see `keptFile` */
  | "export what is kept"
  /** undo the last edit, because something could not be computed after it */
  | "take back the last change"
  /** compute again, with more patience */
  | "wait longer"
  /** compute again what stopped */
  | "compute again"
  /** give out what is on screen as a file */
  | "export the show"
  /** put the version of the notice on the board, as one step that can be taken back */
  | "take the version";

export interface Notice {
  /** one notice of an id at a time */
  id: string;
  severity: "error" | "warning" | "note";
  sentence: string;
  /** more lines, as one a fault */
  details: readonly string[];
  waysOut: readonly WayOut[];
  /** what a way out does besides taking the notice away, where that is the business of who told it */
  acts?: Partial<Record<WayOut, () => void>>;
}

/** The list with a notice added; one of the same id is replaced. */
export function withNotice(notices: readonly Notice[], notice: Notice): readonly Notice[] {
  return [...withoutNotice(notices, notice.id), notice];
}

/** The list without the notice of an id. */
export function withoutNotice(notices: readonly Notice[], id: string): readonly Notice[] {
  return notices.some((notice) => notice.id === id) ? notices.filter((notice) => notice.id !== id) : notices;
}
