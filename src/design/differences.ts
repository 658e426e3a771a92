/** The differences of two documents, value by value. */

export interface Difference {
  /** dotted, with indices */
  path: string;
  /** undefined if there is nothing at the path */
  before: unknown;
  after: unknown;
}

type Leaves = ReadonlyMap<string, unknown>;

function addLeaves(value: unknown, path: string, leaves: Map<string, unknown>): void {
  if (value === null || typeof value !== "object") leaves.set(path, value);
  else
    for (const [key, inner] of Object.entries(value)) addLeaves(inner, path ? `${path}.${key}` : key, leaves);
}

function leavesOf(document: object): Leaves {
  const leaves = new Map<string, unknown>();
  addLeaves(document, "", leaves);
  return leaves;
}

/** A part that is null in one document and has values in the other is reported by those values. */
function reportedByParts(path: string, value: unknown, other: Leaves): boolean {
  return value === null && !other.has(path) && [...other.keys()].some((each) => each.startsWith(`${path}.`));
}

/**
 * The values in which two documents differ, in the order of the first; those that only the second has come last.
 * @returns an empty list for equal documents
 */
export function differences(before: object, after: object): Difference[] {
  const [old, next] = [leavesOf(before), leavesOf(after)];
  const paths = [...new Set([...old.keys(), ...next.keys()])];
  return paths
    .filter((path) => !Object.is(old.get(path), next.get(path)))
    .filter((path) => !reportedByParts(path, old.get(path), next))
    .filter((path) => !reportedByParts(path, next.get(path), old))
    .map((path) => ({ path, before: old.get(path), after: next.get(path) }));
}
