import { draftPlace } from "../ui/drafts";

/** The application-wide shortcuts, whatever has the focus. */
export type ShortcutName = "undo" | "redo" | "export" | "sheet";

const keys: Record<string, ShortcutName> = {
  z: "undo",
  "shift+z": "redo",
  y: "redo",
  s: "export",
  p: "sheet",
};

/** Ctrl or Cmd with a letter; null if it is no shortcut. */
export function shortcutOf(
  event: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "shiftKey" | "altKey">,
) {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  return keys[`${event.shiftKey ? "shift+" : ""}${event.key.toLowerCase()}`] ?? null;
}

/** The undo or redo that the browser's own menus and gestures request; null for other input. */
export function historyStepOf(inputType: string): "undo" | "redo" | null {
  return { historyUndo: "undo" as const, historyRedo: "redo" as const }[inputType] ?? null;
}

/** In free text with a draft, the browser's own undo takes precedence. */
export function belongsToField(name: ShortcutName, target: EventTarget | null): boolean {
  if (name !== "undo" && name !== "redo") return false;
  return draftPlace(target) !== null && (target as HTMLElement).dataset.ownUndo !== undefined;
}
