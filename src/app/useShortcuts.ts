import { useEffect } from "react";
import { session, workbench } from "../workbench/session";
import { saveDesign } from "./files";
import { openSheet } from "./place";
import { belongsToField, type ShortcutName, shortcutOf } from "./shortcuts";

const openDesignId = () => session.store.getState().history.present.open;

const actions: Record<ShortcutName, () => void> = {
  undo: () => workbench.undo(),
  redo: () => workbench.redo(),
  export: () => saveDesign(openDesignId()),
  sheet: openSheet,
};

/** Listens for the keys of the whole screen while the app stands. */
export function useShortcuts() {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const name = shortcutOf(event);
      if (!name || belongsToField(name, event.target)) return;
      event.preventDefault();
      actions[name]();
    };
    window.addEventListener("keydown", onKeyDown);
    return () => window.removeEventListener("keydown", onKeyDown);
  }, []);
}
