/** The form's control for a dotted path, or for the nearest path above or below it. */
export function fieldElement(path: string, root: ParentNode = document): HTMLElement | null {
  const parts = path.split(".");
  for (let length = parts.length; length > 0; length--) {
    const start = parts.slice(0, length).join(".");
    const found =
      root.querySelector<HTMLElement>(`[data-field="${start}"]`) ??
      root.querySelector<HTMLElement>(`[data-field^="${start}."]`);
    if (found) return found;
  }
  return null;
}

/** Opens the section with the field of a path, scrolls the field into view and focuses it. */
export function goToField(path: string) {
  const element = fieldElement(path);
  element?.closest("details")?.setAttribute("open", "");
  element?.scrollIntoView({ block: "center" });
  element?.focus();
}
