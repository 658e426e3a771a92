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
const PLACES = ["#sheet", "#theory", "#versions", ""];

function chunkNames(): string[] {
  return readdirSync(ASSETS).filter((name) => /\.(js|css)$/.test(name));
}

async function wander(page: Page): Promise<void> {
  for (const view of VIEWS) {
    const tab = page.getByRole("tab", { name: view });
    if ((await tab.count()) > 0) await tab.click({ timeout: 3000 });
    await page.waitForTimeout(120);
  }
  for (const place of PLACES) {
    await page.evaluate((hash) => {
      window.location.hash = hash;
    }, place);
    await page.waitForTimeout(150);
  }
}

function words(page: Page): Promise<string> {
  return page.evaluate(() => document.body.innerText.trim());
}

/** ms */
const PATIENCE = 8000;

/** What must never be read on a page. */
const RAW = /\b(NaN|undefined|Infinity|TypeError|ReferenceError)\b|\[object/;

/** Waits for the cautions and puts them away, or for the safe page; without the entry itself neither comes. */
async function arrive(page: Page): Promise<void> {
  const cautions = page.getByRole("button", { name: "I have read and understood this" });
  const arrived = page.locator('dialog[open], main, h1:has-text("safe page")').first();
  await arrived.waitFor({ timeout: PATIENCE }).catch(() => undefined);
  // the cautions come with the bench or right after it
  await page.waitForTimeout(300);
  if ((await cautions.count()) > 0) await cautions.click();
}

async function tryChunk(context: BrowserContext, address: string, chunk: string): Promise<string | null> {
  const page = await context.newPage();
  const crashes: string[] = [];
  page.on("pageerror", (error) => crashes.push(String(error)));
  await context.route(`**/assets/${chunk}`, (route) => route.abort());
  await page.goto(address);
  await arrive(page);
  await wander(page);
  const broken = await words(page);
  if (broken.length < 100) return `the page is empty but for “${broken}”`;
  const raw = RAW.exec(broken);
  if (raw) return `the page says “${raw[0]}”`;
  await context.unroute(`**/assets/${chunk}`);
  await page.reload();
  await arrive(page);
  await page.locator("main").first().waitFor({ timeout: PATIENCE });
  await wander(page);
  const failing = await page.getByRole("button", { name: "Retry" }).count();
  if (failing > 0) return "what failed still fails once its chunk is there";
  const unforeseen = crashes.filter((crash) => !/fetch|import|load|CSS/i.test(crash));
  return unforeseen[0] ?? null;
}

async function run(tries: number, _seed: number, lab: Lab) {
  const names = chunkNames();
  const losses: string[] = [];
  const tried = Math.min(tries, names.length);
  for (const chunk of names.slice(0, tried)) {
    const context = await lab.newContext();
    const wrong = await tryChunk(context, lab.address, chunk).catch(String);
    if (wrong !== null) losses.push(`${chunk}: ${wrong}`);
    await context.close();
  }
  return { tried, lost: losses.length, worst: `${names.length} chunks`, losses };
}

export const chunks: TortureRow = { name: "a chunk that does not load", full: 1000, short: 1, run };
