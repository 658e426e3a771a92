/** The workbench in a page of the torture: opened, its cautions acknowledged, what goes wrong on it collected. */
import type { BrowserContext, Page } from "playwright-core";

/** ms; a page that is not there by then counts as lost */
const PATIENCE = 20_000;

export interface Bench {
  page: Page;
  /** errors on the console and exceptions that nobody caught */
  faults: string[];
}

/**
 * Runs in the page: presses away the cautions where they stand, and waits for the cross-section, the last
 * thing to come, also where nothing may be changed. Tells whether it came.
 */
async function arriveInPage(patience: number): Promise<boolean> {
  const until = performance.now() + patience;
  while (performance.now() < until) {
    const buttons = [...document.querySelectorAll<HTMLButtonElement>("dialog[open] button")];
    const read = buttons.find((button) => button.textContent === "I have read and understood this");
    if (read) read.click();
    else if (document.querySelector('main [aria-label^="Cross-section of the coil"]')) return true;
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  return false;
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
  await page.goto(address, { timeout: PATIENCE, waitUntil: "commit" });
  if (!(await page.evaluate(arriveInPage, PATIENCE)))
    throw new Error(`the bench did not come within ${PATIENCE / 1000} s`);
  return { page, faults };
}

/** What stands among the notices, in words. */
export function noticesOf(page: Page): Promise<string[]> {
  return page.locator("header [data-notice]").allInnerTexts();
}

/** Runs in the page: the sign of saving, once it is one of these words or the time is over. */
async function signInPage([words, patience]: [readonly string[], number]): Promise<string> {
  const known = ["Saved", "Kept", "Saving", "Not saved yet", "Not saved"];
  const textOf = () =>
    [...document.querySelectorAll("[role=status]")]
      .map((each) => each.textContent?.trim() ?? "")
      .find((text) => known.includes(text)) ?? "";
  const until = performance.now() + patience;
  while (!words.includes(textOf()) && performance.now() < until)
    await new Promise((resolve) => setTimeout(resolve, 10));
  return textOf();
}

const AT_REST = ["Saved", "Kept", "Not saved"];

/**
 * The sign of saving, waited for until it is one of the words: by default one that stays.
 * @param patience ms after which it is told whatever it says
 */
export function signOf(page: Page, patience: number, words: readonly string[] = AT_REST): Promise<string> {
  return page.evaluate(signInPage, [words, patience] as [readonly string[], number]);
}

/** Runs in the page: types a text into a field and presses Enter, wherever the field is scrolled to. */
async function typeInPage([path, text]: [string, string]): Promise<void> {
  const field = document.querySelector<HTMLInputElement>(`[data-field="${path}"]`);
  if (!field || field.disabled) throw new Error(`${path} takes nothing`);
  field.focus();
  Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set?.call(field, text);
  field.dispatchEvent(new Event("input", { bubbles: true }));
  await Promise.resolve();
  field.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true, cancelable: true }));
}

/** Types a text into the field of a path and presses Enter. */
export function typeInto(page: Page, path: string, text: string): Promise<void> {
  return page.evaluate(typeInPage, [path, text] as [string, string]);
}
