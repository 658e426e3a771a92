import { draftPlace } from "../ui/drafts";

/** What a key press asks of the whole screen, whatever has the focus. */
export type ShortcutName = "undo" | "redo" | "export" | "sheet";

const keys: Record<string, ShortcutName> = {
  z: "undo",
  "shift+z": "redo",
  y: "redo",
  s: "export",
  p: "sheet",
};

/** Ctrl or Cmd with a letter; null where the press means nothing here. */
export function shortcutOf(
  event: Pick<KeyboardEvent, "key" | "ctrlKey" | "metaKey" | "shiftKey" | "altKey">,
) {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  return keys[`${event.shiftKey ? "shift+" : ""}${event.key.toLowerCase()}`] ?? null;
}

/** What the browser's own menus and gestures ask of a text; null for what is no step back or forth. */
export function historyStepOf(inputType: string): "undo" | "redo" | null {
  return { historyUndo: "undo" as const, historyRedo: "redo" as const }[inputType] ?? null;
}

/** In free text that is not taken over yet the browser's own undo of typing comes first. */
export function belongsToField(name: ShortcutName, target: EventTarget | null): boolean {
  if (name !== "undo" && name !== "redo") return false;
  return draftPlace(target) !== null && (target as HTMLElement).dataset.ownUndo !== undefined;
}
