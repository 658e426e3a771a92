/** Local storage, any call of which may throw: errors are returned as values. */

export interface LocalReading {
  /** null if there is none, or if the browser refuses */
  text: string | null;
  /** what the browser threw; null if nothing */
  refusal: unknown;
}

export interface LocalPlace {
  read(key: string): LocalReading;
  /** @returns what the browser threw; null if it is written */
  write(key: string, text: string): unknown;
  remove(key: string): void;
  /** empty if the browser refuses */
  keys(): readonly string[];
}

const NOWHERE = new Error("there is no local storage");

/** Local storage; if there is none, every call is refused. */
export function newLocalPlace(storage: Storage | null): LocalPlace {
  const tried = <Value>(work: (known: Storage) => Value): { value: Value | null; refusal: unknown } => {
    if (!storage) return { value: null, refusal: NOWHERE };
    try {
      return { value: work(storage), refusal: null };
    } catch (error) {
      return { value: null, refusal: error ?? NOWHERE };
    }
  };
  return {
    read(key) {
      const { value, refusal } = tried((known) => known.getItem(key));
      return { text: typeof value === "string" ? value : null, refusal };
    },
    write: (key, text) => tried((known) => known.setItem(key, text)).refusal,
    remove: (key) => void tried((known) => known.removeItem(key)),
    keys() {
      const { value } = tried((known) =>
        Array.from({ length: known.length }, (_, index) => known.key(index)).filter((key) => key !== null),
      );
      return value ?? [];
    },
  };
}
