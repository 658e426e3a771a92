/** The workbench in a page of the torture: opened, its cautions acknowledged, what goes wrong on it collected. */
import type { BrowserContext, Page } from "playwright-core";

/** ms; a page that is not there by then counts as lost */
const PATIENCE = 20_000;

export interface Bench {
  page: Page;
  /** errors on the console and exceptions that nobody caught */
  faults: string[];
}

/** Presses away the cautions where they stand. */
export async function acknowledge(page: Page): Promise<void> {
  await page.locator('[role="slider"][aria-label="Tap on the primary"], dialog[open]').first().waitFor({
    timeout: PATIENCE,
  });
  const cautions = page.getByRole("button", { name: "I have read and understood this" });
  if ((await cautions.count()) > 0) await cautions.click();
}

/** Opens the workbench in a context and waits until its drawing is there. */
export async function openBench(context: BrowserContext, address: string): Promise<Bench> {
  const page = await context.newPage();
  const faults: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(message.text());
  });
  page.on("pageerror", (error) => faults.push(String(error)));
  await page.goto(address, { timeout: PATIENCE });
  await acknowledge(page);
  await page.locator('[role="slider"][aria-label="Tap on the primary"]').waitFor({ timeout: PATIENCE });
  return { page, faults };
}

/** What stands among the notices, in words. */
export function noticesOf(page: Page): Promise<string[]> {
  return page.locator('header [aria-live="polite"] > div').allInnerTexts();
}
