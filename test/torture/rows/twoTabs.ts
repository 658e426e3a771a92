/**
 * Two tabs, each in a process of its own, edit the same show at the same time: one state is kept, the tab
 * that lost says so, and its edits are among the versions.
 */
import type { BrowserContext, Page } from "playwright-core";
import type { Lab } from "../lab";
import type { TortureRow } from "../row";
import { openBench, signOf, typeInto } from "../support/bench";
import { newRandom, type Random } from "../support/random";

/** ms in which a tab has heard that another has saved */
const HEARD = 5000;

const TURNS = "secondary.turns";

/** The turns that a tab shows. */
function turnsOf(page: Page): Promise<string> {
  return page.locator(`[data-field="${TURNS}"]`).first().inputValue();
}

function type(page: Page, turns: number): Promise<void> {
  return typeInto(page, TURNS, String(turns));
}

/** Whether the tab says that another one has saved. */
async function lost(page: Page): Promise<boolean> {
  return (await page.locator('header button:has-text("Keep this one")').count()) > 0;
}

/** The tabs that say that they lost, once one does and the other has saved. */
async function losersAmong(pages: readonly Page[]): Promise<number[]> {
  const until = Date.now() + HEARD;
  for (;;) {
    const told = await Promise.all(pages.map(lost));
    const losers = [...told.keys()].filter((index) => told[index]);
    if (losers.length === 1) await signOf(pages[1 - losers[0]], 5000, ["Saved"]);
    if (losers.length > 0 || Date.now() > until) return losers;
    await pages[0].waitForTimeout(20);
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

/** What is kept: the tab is loaded anew and shows it. */
async function keptTurns(page: Page): Promise<string> {
  await page.reload({ waitUntil: "commit" });
  await page.locator(`[data-field="${TURNS}"]`).first().waitFor({ state: "attached" });
  return turnsOf(page);
}

async function tryOnce(context: BrowserContext, address: string, random: Random): Promise<string | null> {
  const tabs = await Promise.all([openBench(context, address), openBench(context, address)]);
  const pages = tabs.map(({ page }) => page);
  const turns = [random.whole(700, 900), random.whole(901, 1100)];
  await type(pages[0], turns[0]);
  await new Promise((resolve) => setTimeout(resolve, random.pick([0, 0, 5, 30, 150])));
  await type(pages[1], turns[1]);
  const losers = await losersAmong(pages);
  if (losers.length !== 1) return `${losers.length} of two tabs say that they lost`;
  const [loser] = losers;
  const winner = 1 - loser;
  const way = random.pick(["Show the other", "Keep this one"]);
  await pages[loser].locator(`header button:has-text("${way}")`).click();
  await pages[loser].locator('header button:has-text("Keep this one")').waitFor({ state: "detached" });
  await signOf(pages[loser], 5000, ["Saved"]);
  const [now, meant] = [await turnsOf(pages[loser]), turns[way === "Show the other" ? winner : loser]];
  if (now !== String(meant)) return `after “${way}” the tab has ${now} turns for ${meant}`;
  const gone = turns[way === "Show the other" ? loser : winner];
  const texts = await versionTexts(pages[loser]);
  if (!texts.some((text) => new RegExp(`"turns":\\s*${gone}\\b`).test(text)))
    return `${gone} turns are in no version`;
  const after = await keptTurns(pages[loser]);
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
