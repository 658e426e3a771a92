/**
 * Two tabs, each in a process of its own, edit the same show at the same time: one state is kept, the tab
 * that lost says so, and its edits are among the versions.
 */
import type { BrowserContext, Page } from "playwright-core";
import type { Lab } from "../lab";
import type { TortureRow } from "../row";
import { openBench } from "../support/bench";
import { newRandom, type Random } from "../support/random";

const TURNS = '[data-field="secondary.turns"]';

/** The turns that a tab shows. */
function turnsOf(page: Page): Promise<string> {
  return page.locator(TURNS).first().inputValue();
}

async function type(page: Page, turns: number): Promise<void> {
  const field = page.locator(TURNS).first();
  await field.fill(String(turns));
  await field.press("Enter");
}

/** Whether the tab says that another one has saved. */
async function lost(page: Page): Promise<boolean> {
  return (await page.getByRole("button", { name: "Keep this one" }).count()) > 0;
}

async function settled(pages: readonly Page[]): Promise<void> {
  for (const page of pages) {
    await page
      .getByRole("status")
      .filter({ hasText: /^(Saved|Not saved)/ })
      .first()
      .waitFor({ timeout: 5000 });
  }
}

/** The texts of all versions kept. */
function versionTexts(page: Page): Promise<string[]> {
  return page.evaluate(
    () =>
      new Promise<string[]>((resolve, reject) => {
        const opening = indexedDB.open("coilwright/keeping");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const reading = database.transaction("versions").objectStore("versions").getAll();
          reading.onsuccess = () => {
            database.close();
            resolve(reading.result.map(({ text }: { text: string }) => text));
          };
          reading.onerror = () => reject(reading.error);
        };
      }),
  );
}

/** The state that a tab opened now would show. */
async function keptTurns(context: BrowserContext, address: string): Promise<string> {
  const { page } = await openBench(context, address);
  const turns = await turnsOf(page);
  await page.close();
  return turns;
}

async function tryOnce(context: BrowserContext, address: string, random: Random): Promise<string | null> {
  const tabs = [await openBench(context, address), await openBench(context, address)];
  const pages = tabs.map(({ page }) => page);
  const turns = [random.whole(700, 900), random.whole(901, 1100)];
  await type(pages[0], turns[0]);
  await new Promise((resolve) => setTimeout(resolve, random.pick([0, 0, 5, 30, 150])));
  await type(pages[1], turns[1]);
  await settled(pages);
  await pages[0].waitForTimeout(300);
  const losers = [];
  for (const [index, page] of pages.entries()) if (await lost(page)) losers.push(index);
  if (losers.length !== 1) return `${losers.length} of two tabs say that they lost`;
  const [loser] = losers;
  const winner = 1 - loser;
  const kept = await keptTurns(context, address);
  if (kept !== String(turns[winner])) return `the winner has ${turns[winner]} turns, ${kept} are kept`;
  const way = random.pick(["Show the other", "Keep this one"]);
  await pages[loser].getByRole("button", { name: way }).click();
  await settled([pages[loser]]);
  await pages[loser].waitForTimeout(300);
  const [now, meant] = [await turnsOf(pages[loser]), turns[way === "Show the other" ? winner : loser]];
  if (now !== String(meant)) return `after “${way}” the tab has ${now} turns for ${meant}`;
  const gone = turns[way === "Show the other" ? loser : winner];
  const texts = await versionTexts(pages[loser]);
  if (!texts.some((text) => new RegExp(`"turns":\\s*${gone}\\b`).test(text)))
    return `${gone} turns are in no version`;
  const after = await keptTurns(context, address);
  if (after !== String(meant)) return `after “${way}” ${after} turns are kept for ${meant}`;
  return tabs.flatMap(({ faults }) => faults)[0] ?? null;
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
    worst: "one state kept each time",
    losses: losses.slice(0, 20),
  };
}

export const twoTabs: TortureRow = { name: "two tabs at once", full: 60, short: 1, run };
