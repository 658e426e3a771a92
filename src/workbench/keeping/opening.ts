/** What the workbench begins with: the kept show, a backup, or the example, and what is told about it. */
import { exampleShow } from "../../design/examples";
import type { Show } from "../../design/show";
import type { Notice } from "../notice";
import type { Keeper } from "./keeper";
import type { LoadedShow } from "./loadedShow";

export interface Opening {
  show: Show;
  notices: readonly Notice[];
  readOnly: string | null;
}

type Unreadable = Exclude<LoadedShow, { kind: "ok" } | { kind: "nothing" }>;

function tooNewNotice(sentence: string): Notice {
  return {
    id: "kept-show",
    severity: "error",
    sentence,
    details: [],
    waysOut: ["export what is kept", "start afresh"],
  };
}

function unreadableNotice(loaded: Unreadable, held: string | null, instead: string): Notice {
  return {
    id: "kept-show",
    severity: "error",
    sentence: `${loaded.sentence} ${held ?? "Its text was set aside unchanged."} ${instead}`,
    details: loaded.kind === "invalid" ? loaded.faults : [],
    waysOut:
      held === null ? ["export what is kept", "dismiss"] : ["export what is kept", "discard what is kept"],
  };
}

function openUnreadable(loaded: Unreadable, keeper: Keeper): Opening {
  const backup = keeper.backup();
  const show = backup ?? exampleShow();
  if (loaded.kind === "too new") {
    return { show, notices: [tooNewNotice(loaded.sentence)], readOnly: loaded.sentence };
  }
  const instead = backup ? "The newest backup is shown." : "The example is shown.";
  return { show, notices: [unreadableNotice(loaded, keeper.heldBecause(), instead)], readOnly: null };
}

/** Loads through the keeper; without one (no storage) the example is shown. */
export function openKept(keeper: Keeper | null): Opening {
  const loaded: LoadedShow = keeper?.load() ?? { kind: "nothing" };
  if (loaded.kind === "nothing") return { show: exampleShow(), notices: [], readOnly: null };
  if (loaded.kind === "ok") return { show: loaded.show, notices: [], readOnly: null };
  return keeper ? openUnreadable(loaded, keeper) : { show: exampleShow(), notices: [], readOnly: null };
}
