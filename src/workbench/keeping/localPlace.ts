/** Local storage, of which any call may throw: what is refused comes back as a value. */

export interface LocalReading {
  /** null where there is none, and where the browser refuses */
  text: string | null;
  /** what the browser threw; null where it answered */
  refusal: unknown;
}

export interface LocalPlace {
  read(key: string): LocalReading;
  /** @returns what the browser threw; null where it is written */
  write(key: string, text: string): unknown;
  remove(key: string): void;
  /** empty where the browser refuses */
  keys(): readonly string[];
}

const NOWHERE = new Error("there is no local storage");

/** Local storage, or a place that refuses everything where there is none. */
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
