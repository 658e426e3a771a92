/**
 * The room that the browser grants is full of our own versions: the live save goes first, the oldest
 * versions give way, and what is called saved is there afterwards.
 */
import type { BrowserContext, Page } from "playwright-core";
import type { Lab } from "../lab";
import type { TortureRow } from "../row";
import { noticesOf, openBench } from "../support/bench";
import { FIELD, heldEdit, typedAs } from "../support/editor";
import { newRandom, type Random } from "../support/random";

/** bytes that the browser grants, little enough to be filled quickly */
const GRANTED = 3_000_000;
/** ms for a save that has to make room first */
const PATIENCE = 20_000;

async function type(page: Page, edit: number): Promise<void> {
  const field = page.locator(`[data-field="${FIELD}"]`).first();
  await field.fill(String(typedAs(edit)));
  await field.press("Enter");
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
      const text = String.fromCharCode(...Array.from({ length: 100 }, () => 32 + Math.random() * 90)).repeat(
        size / 100,
      );
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

async function tryOnce(context: BrowserContext, address: string, random: Random): Promise<string | null> {
  const { page, faults } = await openBench(context, address);
  const session = await context.newCDPSession(page);
  await session.send("Storage.overrideQuotaForOrigin", {
    origin: new URL(address).origin,
    quotaSize: GRANTED,
  });
  await type(page, random.whole(1, 1000));
  await page.waitForTimeout(300);
  const taken = await page.evaluate(fill, random.pick([1000, 20_000, 100_000]));
  if (taken === 0) return "nothing could be filled, so nothing was tried";
  const edit = random.whole(1001, 80_000);
  await type(page, edit);
  const sign = page
    .getByRole("status")
    .filter({ hasText: /^(Saved|Not saved)/ })
    .first();
  await sign.waitFor({ timeout: PATIENCE });
  const text = (await sign.textContent())?.trim();
  if (text !== "Saved")
    return `the sign says “${text}” (${(await noticesOf(page))[0] ?? "without a notice"})`;
  await page.close();
  const again = await openBench(context, address);
  const held = await heldEdit(again.page);
  await again.page.close();
  if (held !== edit) return `${typedAs(edit)} mm was called saved, ${typedAs(held)} mm is there`;
  return faults[0] ?? null;
}

async function run(tries: number, seed: number, lab: Lab) {
  const random = newRandom(seed);
  const losses: string[] = [];
  for (let index = 0; index < tries; index++) {
    const context = await lab.newContext();
    const wrong = await tryOnce(context, lab.address, random).catch(String);
    if (wrong !== null) losses.push(`try ${index}: ${wrong}`);
    await context.close();
  }
  return {
    tried: tries,
    lost: losses.length,
    worst: `${GRANTED / 1e6} MB granted`,
    losses: losses.slice(0, 20),
  };
}

export const fullOfVersions: TortureRow = { name: "full of our own versions", full: 30, short: 1, run };
