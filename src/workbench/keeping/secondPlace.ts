/**
 * A second place for data that must not be lost: the browser's cache storage, where each entry is a separate file,
 * so that damage to the database does not affect it.
 */
import { SECOND_PLACE } from "./storageKeys";
import { within } from "./within";

/** Nothing here rejects: if the browser refuses or does not respond, there is no second place. */
export interface SecondPlace {
  /** Resolves when the body is stored under the name, or cannot be. */
  put(name: string, body: string | Uint8Array): Promise<void>;
  /** null if there is none with the name, or it cannot be read */
  read(name: string): Promise<Blob | null>;
  names(): Promise<string[]>;
  remove(names: readonly string[]): Promise<void>;
}

/** ms for a request */
const TIMEOUT = 2000;

/** The keys of cache storage are URLs; these are never fetched. */
function addressOf(name: string): string {
  return `/kept/${encodeURIComponent(name)}`;
}

function nameOf(address: string): string {
  return decodeURIComponent(new URL(address).pathname.slice(addressOf("").length));
}

/** A copy of the bytes in ordinary memory, which `Response` requires. */
function bodyOf(body: string | Uint8Array): string | Uint8Array<ArrayBuffer> {
  return typeof body === "string" ? body : new Uint8Array(body);
}

/** Opens the cache for each request, because writes to a cache that was cleared meanwhile would be lost. */
async function use<Value>(work: (cache: Cache) => Promise<Value>, fallback: Value): Promise<Value> {
  try {
    return await within(TIMEOUT, caches.open(SECOND_PLACE).then(work));
  } catch {
    return fallback;
  }
}

/** The second place in this browser. */
export function secondPlace(): SecondPlace {
  return {
    put: (name, body) => use((cache) => cache.put(addressOf(name), new Response(bodyOf(body))), undefined),
    read: (name) => use(async (cache) => (await cache.match(addressOf(name)))?.blob() ?? null, null),
    names: () => use(async (cache) => (await cache.keys()).map(({ url }) => nameOf(url)), []),
    remove: (names) =>
      use(async (cache) => {
        await Promise.all(names.map((name) => cache.delete(addressOf(name))));
      }, undefined),
  };
}
