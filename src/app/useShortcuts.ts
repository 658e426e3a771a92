import { useEffect } from "react";
import { commitDrafts, draftPlace, drafts, dropDraft } from "../ui/drafts";
import { session, workbench } from "../workbench/session/session";
import { saveDesign } from "./files";
import { openSheet, sheetIsOpen } from "./place";
import { belongsToField, historyStepOf, type ShortcutName, shortcutOf } from "./shortcuts";

const openDesignId = () => session.store.getState().history.present.open;

/** What is typed and not taken over goes first: the field that has the focus shows its value again. */
function undo() {
  const place = draftPlace(document.activeElement);
  if (place === null) workbench.undo();
  else dropDraft(place);
}

const actions: Record<ShortcutName, () => void> = {
  undo,
  redo: () => workbench.redo(),
  export: () => saveDesign(openDesignId()),
  sheet: () => (sheetIsOpen() ? window.print() : openSheet()),
};

function onKeyDown(event: KeyboardEvent) {
  if (event.isComposing) return;
  const name = shortcutOf(event);
  if (!name || belongsToField(name, event.target)) return;
  event.preventDefault();
  actions[name]();
}

/**
 * The browser's history of typing knows no design: it would put a text of long ago into whichever field
 * it was typed in. So it works within free text alone, and only where the focus is.
 */
function onBeforeInput(event: InputEvent) {
  const name = historyStepOf(event.inputType);
  if (!name) return;
  if (event.target === document.activeElement && belongsToField(name, event.target)) return;
  event.preventDefault();
  actions[name]();
}

/** What was typed is taken over first; what cannot be would be gone with the page, so the browser asks. */
function onLeaving(event: BeforeUnloadEvent) {
  commitDrafts();
  if (Object.keys(drafts.getState()).length > 0) event.preventDefault();
}

/** Listens for the keys of the whole screen, and takes over what was typed before the page goes, while the app stands. */
export function useShortcuts() {
  useEffect(() => {
    const listening = new AbortController();
    const { signal } = listening;
    window.addEventListener("keydown", onKeyDown, { signal });
    window.addEventListener("beforeinput", onBeforeInput, { signal });
    window.addEventListener("beforeprint", commitDrafts, { signal });
    // after the session's own listener: what is taken over here is saved as the page goes, without a question
    window.addEventListener("beforeunload", onLeaving, { signal });
    // before the session's own listener, which saves
    window.addEventListener("pagehide", commitDrafts, { signal, capture: true });
    return () => listening.abort();
  }, []);
}
