/** In what two documents differ, value by value. */

export interface Difference {
  /** dotted, with indices */
  path: string;
  /** undefined where there is nothing at the path */
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

/** An absent part is null on one side and has values of its own on the other: those tell it. */
function toldByItsParts(path: string, value: unknown, other: Leaves): boolean {
  return value === null && !other.has(path) && [...other.keys()].some((each) => each.startsWith(`${path}.`));
}

/**
 * The values in which two documents differ, in the order of the first, then what only the second has.
 * @returns none where both hold the same
 */
export function differences(before: object, after: object): Difference[] {
  const [old, next] = [leavesOf(before), leavesOf(after)];
  const paths = [...new Set([...old.keys(), ...next.keys()])];
  return paths
    .filter((path) => !Object.is(old.get(path), next.get(path)))
    .filter((path) => !toldByItsParts(path, old.get(path), next))
    .filter((path) => !toldByItsParts(path, next.get(path), old))
    .map((path) => ({ path, before: old.get(path), after: next.get(path) }));
}
