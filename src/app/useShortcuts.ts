import { useEffect } from "react";
import { commitDrafts, draftPlace, drafts, dropDraft } from "../ui/drafts";
import { session, workbench } from "../workbench/session/session";
import { saveDesign } from "./files";
import { openSheet, sheetIsOpen } from "./place";
import { belongsToField, historyStepOf, type ShortcutName, shortcutOf } from "./shortcuts";

const openDesignId = () => session.store.getState().history.present.open;

/** A draft is dropped first: the focused field then shows its value again. */
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
 * The browser's typing history knows nothing of designs and could restore old text in any field. It is
 * therefore limited to the focused free-text field.
 */
function onBeforeInput(event: InputEvent) {
  const name = historyStepOf(event.inputType);
  if (!name) return;
  if (event.target === document.activeElement && belongsToField(name, event.target)) return;
  event.preventDefault();
  actions[name]();
}

/** Commits drafts; those that cannot be committed would be lost, so the browser asks before it leaves. */
function onLeaving(event: BeforeUnloadEvent) {
  commitDrafts();
  if (Object.keys(drafts.getState()).length > 0) event.preventDefault();
}

/** Handles the application-wide shortcuts, and commits drafts before the page is printed or left. */
export function useShortcuts() {
  useEffect(() => {
    const listening = new AbortController();
    const { signal } = listening;
    window.addEventListener("keydown", onKeyDown, { signal });
    window.addEventListener("beforeinput", onBeforeInput, { signal });
    window.addEventListener("beforeprint", commitDrafts, { signal });
    // runs after the session's own listener, so that an edit committed here does not make the browser ask
    window.addEventListener("beforeunload", onLeaving, { signal });
    // runs before the session's own listener, which saves
    window.addEventListener("pagehide", commitDrafts, { signal, capture: true });
    return () => listening.abort();
  }, []);
}
