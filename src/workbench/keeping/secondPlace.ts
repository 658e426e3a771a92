/**
 * A second place for what must not be lost: the browser's cache storage, where each entry is a file of its own,
 * so that damage to the database does not reach it.
 */
import { SECOND_PLACE } from "./storageKeys";
import { within } from "./within";

/** Nothing here rejects: where the browser refuses or does not answer, there is no second place. */
export interface SecondPlace {
  /** Answers when the body is kept under the name, or cannot be. */
  put(name: string, body: string | Uint8Array): Promise<void>;
  /** null where there is none of the name, or it cannot be read */
  read(name: string): Promise<Blob | null>;
  names(): Promise<string[]>;
  remove(names: readonly string[]): Promise<void>;
}

/** ms in which the browser must have done what was asked */
const PATIENCE = 2000;

/** Cache storage keeps under addresses; nothing is ever fetched from these. */
function addressOf(name: string): string {
  return `/kept/${encodeURIComponent(name)}`;
}

function nameOf(address: string): string {
  return decodeURIComponent(new URL(address).pathname.slice(addressOf("").length));
}

/** A body of its own, whatever memory the bytes lie in. */
function bodyOf(body: string | Uint8Array): string | Uint8Array<ArrayBuffer> {
  return typeof body === "string" ? body : new Uint8Array(body);
}

/** Opened each time, because what was cleared meanwhile would be written to in vain. */
async function use<Value>(work: (cache: Cache) => Promise<Value>, otherwise: Value): Promise<Value> {
  try {
    return await within(PATIENCE, caches.open(SECOND_PLACE).then(work));
  } catch {
    return otherwise;
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
