/** The initial show of the workbench — the stored one, an earlier state or the example — and its notices. */
import { exampleShow } from "../../design/examples";
import type { Show } from "../../design/show";
import type { Notice, WayOut } from "../session/notice";
import type { Keeper } from "./keeper";
import type { Unreadable } from "./resolve";
import { databaseNotice, localNotice, NO_STORAGE, saveNotice } from "./saveNotices";

export interface Opening {
  show: Show;
  notices: readonly Notice[];
  readOnly: string | null;
}

function keptShowNotice(sentence: string, details: readonly string[], waysOut: readonly WayOut[]): Notice {
  return { id: "kept-show", severity: "error", sentence, details, waysOut };
}

function tooNewNotice(sentence: string): Notice {
  return keptShowNotice(sentence, [], ["export what is kept", "start afresh"]);
}

function unreadableNotice(unreadable: Unreadable, held: string | null, instead: string): Notice {
  const sentence = `${unreadable.sentence} ${held ?? "Its text was backed up unchanged."} ${instead}`;
  const details = unreadable.kind === "invalid" ? unreadable.faults : [];
  return keptShowNotice(sentence, details, [
    "export what is kept",
    held === null ? "dismiss" : "discard what is kept",
  ]);
}

/** The notices about the browser's storage. */
function storageNotices(keeper: Keeper, trouble: string | null): Notice[] {
  const refused = keeper.refusedAtStart();
  if (trouble !== null && refused !== null) return [saveNotice(NO_STORAGE)];
  return [
    ...(trouble === null ? [] : [databaseNotice(trouble)]),
    ...(refused === null ? [] : [localNotice(refused)]),
  ];
}

/**
 * Loads through the keeper.
 * @param trouble what is wrong with the database; null if nothing is
 */
export function openKept(keeper: Keeper, trouble: string | null): Opening {
  const { shown, unreadable } = keeper.load();
  const notices = storageNotices(keeper, trouble);
  if (shown.kind === "nothing") return { show: exampleShow(), notices, readOnly: null };
  if (shown.kind === "ok" && unreadable === null) return { show: shown.show, notices, readOnly: null };
  const earlier = shown.kind === "ok" ? shown.show : keeper.fallback();
  const show = earlier ?? exampleShow();
  if (shown.kind === "too new") {
    return { show, notices: [...notices, tooNewNotice(shown.sentence)], readOnly: shown.sentence };
  }
  const failed = unreadable ?? (shown.kind === "ok" ? null : shown);
  const instead = earlier ? "The newest readable state is shown." : "The example is shown.";
  if (!failed) return { show, notices, readOnly: null };
  return {
    show,
    notices: [...notices, unreadableNotice(failed, keeper.heldBecause(), instead)],
    readOnly: null,
  };
}
