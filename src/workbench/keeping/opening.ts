/** What the workbench begins with: the kept show, an earlier state, or the example, and what is told about it. */
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
  const sentence = `${unreadable.sentence} ${held ?? "Its text was set aside unchanged."} ${instead}`;
  const details = unreadable.kind === "invalid" ? unreadable.faults : [];
  return keptShowNotice(sentence, details, [
    "export what is kept",
    held === null ? "dismiss" : "discard what is kept",
  ]);
}

/** What is told of the places where things are kept. */
function placesNotices(keeper: Keeper, trouble: string | null): Notice[] {
  const refused = keeper.refusedAtStart();
  if (trouble !== null && refused !== null) return [saveNotice(NO_STORAGE)];
  return [
    ...(trouble === null ? [] : [databaseNotice(trouble)]),
    ...(refused === null ? [] : [localNotice(refused)]),
  ];
}

/**
 * Loads through the keeper.
 * @param trouble what is the matter with the database; null where all is well
 */
export function openKept(keeper: Keeper, trouble: string | null): Opening {
  const { shown, unreadable } = keeper.load();
  const notices = placesNotices(keeper, trouble);
  if (shown.kind === "nothing") return { show: exampleShow(), notices, readOnly: null };
  if (shown.kind === "ok" && unreadable === null) return { show: shown.show, notices, readOnly: null };
  const earlier = shown.kind === "ok" ? shown.show : keeper.fallback();
  const show = earlier ?? exampleShow();
  if (shown.kind === "too new") {
    return { show, notices: [...notices, tooNewNotice(shown.sentence)], readOnly: shown.sentence };
  }
  const told = unreadable ?? (shown.kind === "ok" ? null : shown);
  const instead = earlier ? "The newest state that can be read is shown." : "The example is shown.";
  if (!told) return { show, notices, readOnly: null };
  return {
    show,
    notices: [...notices, unreadableNotice(told, keeper.heldBecause(), instead)],
    readOnly: null,
  };
}
