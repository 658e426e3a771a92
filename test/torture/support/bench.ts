/** The workbench in a page of the torture: opened, its cautions acknowledged, what goes wrong on it collected. */
import type { BrowserContext, Page } from "playwright-core";

/** ms; a page that is not there by then counts as lost */
const PATIENCE = 20_000;

/** The cross-section: the last thing to come, also where nothing may be changed. */
const DRAWN = 'main [aria-label^="Cross-section of the coil"]';

export interface Bench {
  page: Page;
  /** errors on the console and exceptions that nobody caught */
  faults: string[];
}

/** Presses away the cautions where they stand. */
export async function acknowledge(page: Page): Promise<void> {
  await page.locator(`${DRAWN}, dialog[open]`).first().waitFor({ timeout: PATIENCE });
  const cautions = page.getByRole("button", { name: "I have read and understood this" });
  if ((await cautions.count()) > 0) await cautions.click();
}

/**
 * Opens the workbench in a context and waits until its drawing is there.
 * @param prepare what is done to the page before the program starts
 */
export async function openBench(
  context: BrowserContext,
  address: string,
  prepare?: (page: Page) => Promise<void>,
): Promise<Bench> {
  const page = await context.newPage();
  await prepare?.(page);
  const faults: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(message.text());
  });
  page.on("pageerror", (error) => faults.push(String(error)));
  await page.goto(address, { timeout: PATIENCE });
  await acknowledge(page);
  await page.locator(DRAWN).first().waitFor({ timeout: PATIENCE });
  return { page, faults };
}

/** What stands among the notices, in words. */
export function noticesOf(page: Page): Promise<string[]> {
  return page.locator("header [data-notice]").allInnerTexts();
}
