/** Reads and replaces values of a design at dotted paths, leaving the rest untouched. */

type Branch = Record<string, unknown>;

function isBranch(value: unknown): value is Branch {
  return value !== null && typeof value === "object";
}

/** The value at a path; undefined if the path does not exist. */
export function valueAt(root: object, path: string): unknown {
  return path.split(".").reduce<unknown>((value, key) => (isBranch(value) ? value[key] : undefined), root);
}

/** The number at a path; null if there is none. */
export function numberAt(root: object, path: string): number | null {
  const value = valueAt(root, path);
  return typeof value === "number" ? value : null;
}

function replaced(value: unknown, keys: readonly string[], next: unknown): unknown {
  if (keys.length === 0) return next;
  if (!isBranch(value)) return value;
  const [key, ...rest] = keys;
  const branch: Branch = Array.isArray(value) ? ([...value] as unknown as Branch) : { ...value };
  branch[key] = replaced(value[key], rest, next);
  return branch;
}

/** A copy with another value at a path; all other parts keep their identity. */
export function withValueAt<Root extends object>(root: Root, path: string, next: unknown): Root {
  return replaced(root, path.split("."), next) as Root;
}

/** All values that match a path in which `*` means every index, each with its own path. */
export function fieldValues(root: object, pattern: string): { path: string; value: unknown }[] {
  let found: { path: string; value: unknown }[] = [{ path: "", value: root }];
  for (const key of pattern.split(".")) {
    found = found.flatMap(({ path, value }) => {
      if (!isBranch(value)) return [];
      const keys = key === "*" ? Object.keys(value) : [key];
      return keys
        .filter((each) => each in value)
        .map((each) => ({ path: path ? `${path}.${each}` : each, value: value[each] }));
    });
  }
  return found;
}
