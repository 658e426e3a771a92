/**
 * Each chunk of the program fails to load once: the page says what could not be fetched, the rest of the
 * bench goes on, and what failed comes when it is asked for again.
 */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContext, Page } from "playwright-core";
import type { Lab } from "../lab";
import type { TortureRow } from "../row";

const ASSETS = join(import.meta.dirname, "..", "..", "..", "dist", "assets");

/** What leads to every part that is fetched when it is first wanted. */
const VIEWS = ["Charts", "Burst", "Line-up", "Score"];
const PLACES = ["sheet", "theory", "versions", ""];

/** Names of all chunks, the build sheet's first. */
function chunkNames(): string[] {
  const names = readdirSync(ASSETS).filter((name) => /\.(js|css)$/.test(name));
  const isSheet = (name: string) => /^BuildSheet-.*\.js$/.test(name);
  return [...names.filter(isSheet), ...names.filter((name) => !isSheet(name))];
}

/** Runs in the page: waits until nothing is being fetched any more. */
async function fetched(): Promise<void> {
  const until = performance.now() + 5000;
  const drawn = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 30)));
  do await drawn();
  while (/Loading the .* …/.test(document.body.innerText) && performance.now() < until);
}

type Step = (page: Page) => Promise<void>;

/** Every view and every place, one after another. */
const STEPS: readonly Step[] = [
  ...VIEWS.map((view) => async (page: Page) => {
    const tab = page.locator(`[role=tab]:text-is("${view}")`);
    if ((await tab.count()) > 0) await tab.click({ timeout: 3000 });
  }),
  ...PLACES.map(
    (place) => (page: Page) => page.evaluate((hash) => window.location.assign(`#${hash}`), place),
  ),
];

/** Where the build sheet is, and the bench after it: enough for a single try. */
const SHEET_AND_BACK = [STEPS[VIEWS.length], STEPS[STEPS.length - 1]];

/** Goes the steps, and tells which of them led to something that could not be fetched. */
async function wander(page: Page, steps: readonly Step[]): Promise<Step[]> {
  const failing: Step[] = [];
  for (const step of steps) {
    await step(page);
    await page.evaluate(fetched);
    if (await fails(page)) failing.push(step);
  }
  return failing;
}

/** Whether a part in sight could not be fetched; without the program itself, everything. */
function fails(page: Page): Promise<boolean> {
  return page.evaluate(
    () =>
      document.querySelector("main") === null ||
      [...document.querySelectorAll("button")].some(
        (button) => button.textContent === "Retry" && button.checkVisibility(),
      ),
  );
}

function words(page: Page): Promise<string> {
  return page.evaluate(() => document.body.innerText.trim());
}

/** ms */
const PATIENCE = 8000;

/** What must never be read on a page. */
const RAW = /\b(NaN|undefined|Infinity|TypeError|ReferenceError)\b|\[object/;

/**
 * Runs in the page: waits for the bench and puts the cautions away, or for the safe page. The cautions come
 * with the bench or after it, until they have been acknowledged.
 */
async function arrive(patience: number): Promise<void> {
  const until = performance.now() + patience;
  const acknowledged = /"cautionsAcknowledged":true/.test(
    localStorage.getItem("coilwright/preferences") ?? "",
  );
  let stoodAt = Number.POSITIVE_INFINITY;
  while (performance.now() < until && performance.now() < stoodAt + (acknowledged ? 0 : 3000)) {
    const buttons = [...document.querySelectorAll<HTMLButtonElement>("dialog[open] button")];
    const read = buttons.find((button) => button.textContent === "I have read and understood this");
    read?.click();
    if (read || document.querySelector("h1")?.textContent?.includes("safe page")) return;
    if (document.querySelector("main")) stoodAt = Math.min(stoodAt, performance.now());
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

async function tryChunk(
  context: BrowserContext,
  address: string,
  chunk: string,
  steps: readonly Step[],
): Promise<string | null> {
  const page = await context.newPage();
  const crashes: string[] = [];
  page.on("pageerror", (error) => crashes.push(String(error)));
  await context.route(`**/assets/${chunk}`, (route) => route.abort());
  await page.goto(address, { waitUntil: "commit" });
  await page.evaluate(arrive, PATIENCE);
  const failing = await wander(page, steps);
  if (steps !== STEPS && failing.length === 0) return "the sheet is there without its chunk";
  const broken = await words(page);
  if (broken.length < 100) return `the page is empty but for “${broken}”`;
  const raw = RAW.exec(broken);
  if (raw) return `the page says “${raw[0]}”`;
  await context.unroute(`**/assets/${chunk}`);
  await page.reload({ waitUntil: "commit" });
  await page.evaluate(arrive, PATIENCE);
  await page.locator("main").first().waitFor({ timeout: PATIENCE });
  const stillFailing = await wander(page, failing);
  if (stillFailing.length > 0) return "what failed still fails once its chunk is there";
  const unforeseen = crashes.filter((crash) => !/fetch|import|load|CSS/i.test(crash));
  return unforeseen[0] ?? null;
}

async function run(tries: number, _seed: number, lab: Lab) {
  const names = chunkNames();
  const losses: string[] = [];
  const tried = Math.min(tries, names.length);
  const steps = tried === 1 ? SHEET_AND_BACK : STEPS;
  for (const chunk of names.slice(0, tried)) {
    const context = await lab.newContext();
    const wrong = await tryChunk(context, lab.address, chunk, steps).catch(
      (error) => String(error).split("\n")[0],
    );
    if (wrong !== null) losses.push(`${chunk}: ${wrong}`);
    await context.close();
  }
  return { tried, lost: losses.length, worst: `${names.length} chunks`, losses };
}

export const chunks: TortureRow = { name: "a chunk that does not load", full: 1000, short: 1, run };
