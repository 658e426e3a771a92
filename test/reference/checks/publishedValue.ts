import published from "../published.json";

/** The values of an entry of the published check data, by its id. */
export function publishedValue(id: string): Record<string, unknown> {
  const entry = (published as unknown as { id: string; value: Record<string, unknown> }[]).find(
    (each) => each.id === id,
  );
  if (!entry) throw new Error(`no published entry is called ${id}`);
  return entry.value;
}
