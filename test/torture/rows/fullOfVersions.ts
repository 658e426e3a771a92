/**
 * The room that the browser grants is full of our own versions. The live save goes first: the oldest
 * versions give way, and what is called saved is there afterwards. A browser that frees what was deleted
 * only much later leaves the present state to local storage: it is then not called saved, a notice says
 * why, it is there all the same, and versions do not go for nothing.
 */
import type { BrowserContext, Page } from "playwright-core";
import type { Lab } from "../lab";
import type { TortureRow } from "../row";
import { noticesOf, openBench, signOf, typeInto } from "../support/bench";
import { FIELD, heldEdit, typedAs } from "../support/editor";
import { newRandom, type Random } from "../support/random";
import { versionLengths } from "../support/versions";

/** bytes that the browser grants, little enough to be filled quickly */
const GRANTED = 1_000_000;
/** edits typed once the room is gone */
const EDITS = 3;
/** ms for a save that has to make room first */
const PATIENCE = 20_000;

function type(page: Page, edit: number): Promise<void> {
  return typeInto(page, FIELD, String(typedAs(edit)));
}

/** Runs in the page: puts versions of a size until the browser takes no more; returns how many it took. */
async function fill(size: number): Promise<number> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open("coilwright/keeping");
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const put = (index: number) =>
    new Promise<boolean>((resolve) => {
      const writing = database.transaction("versions", "readwrite");
      const at = new Date(Date.UTC(2026, 0, 1) + index * 60_000).toISOString();
      // the database compresses, so only what cannot be compressed takes up room
      const text = Array.from({ length: size / 10 }, () =>
        Math.random().toString(36).padEnd(12).slice(2),
      ).join("");
      writing.objectStore("versions").put({
        id: `filler-${index}`,
        kind: "show",
        designId: null,
        title: "Filler",
        at,
        cause: "filling",
        binned: false,
        text,
      });
      writing.oncomplete = () => resolve(true);
      writing.onabort = () => resolve(false);
    });
  let count = 0;
  while (count < 5000 && (await put(count))) count++;
  database.close();
  return count;
}

function sum(lengths: readonly number[]): number {
  return lengths.reduce((total, length) => total + length, 0);
}

interface Outcome {
  sign: string;
  wrong: string | null;
}

/** Types one edit after another until the room is gone and a few more have been answered. */
async function editWhileFull(page: Page, random: Random): Promise<{ sign: string; edit: number }> {
  let edit = random.whole(1001, 80_000);
  let sign = "";
  for (const end = edit + EDITS; edit < end; edit++) {
    await type(page, edit);
    sign = await signOf(page, PATIENCE);
  }
  return { sign, edit: edit - 1 };
}

async function tryOnce(context: BrowserContext, address: string, random: Random): Promise<Outcome> {
  const { page, faults } = await openBench(context, address);
  const session = await context.newCDPSession(page);
  await session.send("Storage.overrideQuotaForOrigin", {
    origin: new URL(address).origin,
    quotaSize: GRANTED,
  });
  await type(page, random.whole(1, 1000));
  await signOf(page, PATIENCE, ["Saved"]);
  const taken = await page.evaluate(fill, random.pick([100_000, 20_000, 5_000]));
  if (taken < 2) return { sign: "", wrong: "nothing could be filled, so nothing was tried" };
  const before = await page.evaluate(versionLengths);
  const { sign, edit } = await editWhileFull(page, random);
  const [notice = "no notice"] = await noticesOf(page);
  if (sign === "Not saved") return { sign, wrong: notice };
  if (sign === "Kept" && !notice.includes("is full")) return { sign, wrong: `kept, and told: ${notice}` };
  const left = await page.evaluate(versionLengths);
  // the one that goes last may take away more than was asked for
  if (sum(left) < sum(before) / 2 - Math.max(...before))
    return { sign, wrong: `of ${sum(before)} characters of versions ${sum(left)} are left` };
  await page.reload({ waitUntil: "commit" });
  await page.locator(`[data-field="${FIELD}"]`).first().waitFor({ state: "attached" });
  const held = await heldEdit(page);
  if (held !== edit) return { sign, wrong: `${typedAs(edit)} mm was typed, ${typedAs(held)} mm is there` };
  return { sign, wrong: faults[0] ?? null };
}

async function run(tries: number, seed: number, lab: Lab) {
  const random = newRandom(seed);
  const losses: string[] = [];
  let kept = 0;
  for (let index = 0; index < tries; index++) {
    const context = await lab.newContext();
    const { sign, wrong } = await tryOnce(context, lab.address, random).catch((error: unknown) => ({
      sign: "",
      wrong: String(error),
    }));
    if (sign === "Kept") kept++;
    if (wrong !== null) losses.push(`try ${index}: ${wrong}`);
    await context.close();
  }
  return {
    tried: tries,
    lost: losses.length,
    worst: `${GRANTED / 1e6} MB granted; ${kept} ended in local storage alone`,
    losses: losses.slice(0, 20),
  };
}

export const fullOfVersions: TortureRow = { name: "full of our own versions", full: 30, short: 1, run };
