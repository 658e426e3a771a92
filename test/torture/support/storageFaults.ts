/** Ways in which a browser's storage fails or holds what nobody expects; each runs in the page before the program does. */

export interface StorageFault {
  name: string;
  /** runs in the page before the program */
  before?: () => void;
  /** runs in the page once the bench stands */
  after?: () => void | Promise<void>;
  /** what stands under the show's key in local storage at the start */
  content?: string;
  /** whether nothing may be changed then, because that would lose what is kept */
  readOnly?: boolean;
}

const KEY = "coilwright/show";

/** Replaces a method of a prototype by one that throws a DOMException of a name. */
const refusals: StorageFault[] = [
  {
    name: "local storage is full at every write",
    before: () => {
      Storage.prototype.setItem = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    },
  },
  {
    name: "local storage refuses every write",
    before: () => {
      Storage.prototype.setItem = () => {
        throw new DOMException("denied", "SecurityError");
      };
    },
  },
  {
    name: "local storage refuses every reading",
    before: () => {
      Storage.prototype.getItem = () => {
        throw new DOMException("denied", "SecurityError");
      };
    },
  },
  {
    name: "local storage refuses to be listed or cleared",
    before: () => {
      Storage.prototype.key = () => {
        throw new Error("no key");
      };
      Storage.prototype.removeItem = () => {
        throw new Error("no removal");
      };
    },
  },
  {
    name: "there is no way to the local storage",
    before: () => {
      Object.defineProperty(window, "localStorage", {
        get: () => {
          throw new DOMException("denied", "SecurityError");
        },
      });
    },
  },
  {
    name: "there is no database",
    before: () => Object.defineProperty(window, "indexedDB", { value: undefined }),
  },
  {
    name: "there is no way to the database",
    before: () => {
      Object.defineProperty(window, "indexedDB", {
        get: () => {
          throw new DOMException("denied", "SecurityError");
        },
      });
    },
  },
  {
    name: "the database throws when it is opened",
    before: () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException("denied", "SecurityError");
      };
    },
  },
  {
    name: "the database never opens",
    before: () => {
      IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest;
    },
  },
  {
    name: "the database is full at every write",
    before: () => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
      IDBObjectStore.prototype.add = IDBObjectStore.prototype.put;
    },
  },
];

const nothingTaken: StorageFault = {
  name: "neither storage takes anything",
  before: () => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
    IDBFactory.prototype.open = () => {
      throw new DOMException("denied", "SecurityError");
    };
  },
};

const happenings: StorageFault[] = [
  { name: "local storage is cleared while open", after: () => localStorage.clear() },
  {
    name: "the databases are deleted while open",
    after: async () => {
      for (const { name } of await indexedDB.databases()) if (name) indexedDB.deleteDatabase(name);
      await new Promise((resolve) => setTimeout(resolve, 200));
    },
  },
  {
    name: "everything is cleared while open",
    after: async () => {
      localStorage.clear();
      for (const { name } of await indexedDB.databases()) if (name) indexedDB.deleteDatabase(name);
      await new Promise((resolve) => setTimeout(resolve, 200));
    },
  },
  {
    name: "another program fills the local storage while open",
    after: () => {
      for (let size = 1 << 22; size >= 1; size >>= 1) {
        for (let times = 0; times < 4; times++) {
          try {
            localStorage.setItem(`other/${size}/${times}`, "x".repeat(size));
          } catch {
            break;
          }
        }
      }
    },
  },
  {
    name: "the journal holds rubbish",
    before: () => {
      const opening = indexedDB.open("coilwright/keeping", 1);
      opening.onupgradeneeded = () => {
        const journal = opening.result.createObjectStore("journal", { keyPath: "revision" });
        opening.result.createObjectStore("versions", { keyPath: "id" });
        journal.put({ revision: "x", text: 5 });
        journal.put({ revision: 1e9, text: '{"app":"coilwright","version":1,"revi' });
        journal.put({ revision: -3 });
      };
      opening.onsuccess = () => {
        const writing = opening.result.transaction("versions", "readwrite");
        writing.objectStore("versions").put({ id: "rubbish", text: { deep: [1, 2] }, at: 7 });
        writing.oncomplete = () => opening.result.close();
      };
    },
  },
  {
    name: "preferences hold rubbish",
    before: () =>
      localStorage.setItem("coilwright/preferences", '{"theme":7,"panelsOpen":[],"unitSystem":{}}'),
  },
];

const envelope = (version: number, show: unknown) =>
  JSON.stringify({ app: "coilwright", version, revision: 7, savedAt: "2026-01-02T03:04:05.000Z", show });

const contents: StorageFault[] = [
  ["an empty text", ""],
  ["words", "hello"],
  ["null", "null"],
  ["a number", "1e999"],
  ["a list", "[[[[[[]]]]]]"],
  ["another program's object", '{"app":"other","version":1}'],
  ["half an envelope", envelope(1, { format: "coilwright-show" }).slice(0, 60)],
  ["an envelope of a newer version", envelope(99, {})],
  ["a show of a newer version", envelope(1, { format: "coilwright-show", version: 99 })],
  ["a show without designs", envelope(1, { format: "coilwright-show", version: 1, designs: {}, order: [] })],
  ["two megabytes of nothing", "x".repeat(2_000_000)],
  ["lists nested without end", "[".repeat(200_000)],
].map(([what, content]) => ({
  name: `local storage holds ${what}`,
  content,
  readOnly: what.includes("newer"),
}));

/** The worst first: a single try tries it. */
export const STORAGE_FAULTS: readonly StorageFault[] = [
  nothingTaken,
  { name: "all is well" },
  ...refusals,
  ...happenings,
  ...contents,
];

/** Runs in the page before the program: puts a text where the show stands, once. */
export function putContent([key, text]: [string, string]): void {
  if (sessionStorage.getItem("put")) return;
  sessionStorage.setItem("put", "1");
  localStorage.setItem(key, text);
}

export const SHOW_ENTRY = KEY;
