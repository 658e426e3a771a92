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

/** In a field with unread text the browser's own undo of typing comes first. */
export function belongsToField(name: ShortcutName, target: EventTarget | null): boolean {
  const typing = target instanceof HTMLElement && target.dataset.draft !== undefined;
  return typing && (name === "undo" || name === "redo");
}
