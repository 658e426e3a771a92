/**
 * Edits in the page as a person makes them, faster than a person can, and tells what the screen called
 * saved. The values rise with every edit, so that one number says what is there after a restart.
 */
import type { Page } from "playwright-core";

export const FIELD = "secondary.windingLength";

/** mm, as the example has it: edit 0; a hundred thousand edits stay within the field's range */
const FIRST = 560;
const STEP = 0.001;

/** What is typed as the edit of a number. */
export function typedAs(edit: number): number {
  return Number((FIRST + edit * STEP).toFixed(3));
}

/** The edit that a value comes from. */
export function editOf(millimetres: number): number {
  return Math.round((millimetres - FIRST) / STEP);
}

export interface Told {
  /** the newest edit that the sign “Saved” stood beside, in this run or an earlier one */
  saved: number;
  /** the newest edit that was told to be typed; the page may have typed more before it ended */
  typed: number;
  /** the first edit of the plan, and the last */
  first: number;
  planned: number;
  /** ms from the last edit to “Saved”, each time it came */
  delays: number[];
}

interface Plan {
  /** the edit that the field holds */
  held: number;
  field: string;
  first: number;
  step: number;
  /** number of the first edit */
  edit: number;
  /** ms to wait after each edit */
  pauses: number[];
}

/** Runs in the page: types along a plan, and tells each edit and each “Saved”. */
async function typeInPage({ held, field, first, step, edit, pauses }: Plan): Promise<void> {
  const tell = (window as unknown as { tell(kind: string, edit: number, delay: number): void }).tell;
  const input = document.querySelector<HTMLInputElement>(`[data-field="${field}"]`);
  const sign = [...document.querySelectorAll("[role=status]")].find((each) =>
    /^(Saved|Saving|Not saved)/.test(each.textContent?.trim() ?? ""),
  );
  if (!input || !sign) throw new Error("the field or the sign is not there");
  const setText = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
  let now = edit - 1;
  let typedAt = 0;
  const saysSaved = () => sign.textContent?.trim() === "Saved";
  new MutationObserver(() => {
    if (typedAt > 0 && saysSaved()) tell("saved", now, performance.now() - typedAt);
  }).observe(sign, { childList: true, characterData: true, subtree: true });
  // whoever edits has seen the page come to rest: its charts are drawn after its first picture
  await new Promise<void>((resolve) => {
    const until = performance.now() + 3000;
    let resting = setTimeout(resolve, 200);
    new MutationObserver(() => {
      clearTimeout(resting);
      resting = setTimeout(resolve, performance.now() < until ? 200 : 0);
    }).observe(document.body, { childList: true, subtree: true });
  });
  input.focus();
  if (saysSaved()) tell("found", held, 0);
  for (const pause of pauses) {
    now++;
    tell("typed", now, 0);
    setText?.call(input, (first + now * step).toFixed(3));
    input.dispatchEvent(new Event("input", { bubbles: true }));
    await Promise.resolve();
    typedAt = performance.now();
    input.dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true, cancelable: true }));
    await new Promise((resolve) => requestAnimationFrame(resolve));
    // a sign that never left “Saved” is believed as well
    if (saysSaved()) tell("saved", now, performance.now() - typedAt);
    await new Promise((resolve) => setTimeout(resolve, pause));
  }
}

/**
 * Starts to edit, and answers with the first edit; what the page tells comes into the object returned, as long as the page lives.
 * @param held the edit that the field holds
 * @param saved the newest edit that was ever called saved
 * @param edit number of the first edit
 * @param pauses ms after each edit
 */
export async function startEditing(
  page: Page,
  { held, saved }: { held: number; saved: number },
  edit: number,
  pauses: number[],
): Promise<Told> {
  const told: Told = { saved, typed: held, first: edit, planned: edit + pauses.length - 1, delays: [] };
  let begun = () => {};
  const beginning = new Promise<void>((resolve) => {
    begun = resolve;
  });
  await page.exposeFunction("tell", (kind: "typed" | "found" | "saved", number: number, delay: number) => {
    if (kind === "typed") {
      told.typed = number;
      begun();
    } else told.saved = Math.max(told.saved, number);
    if (kind === "saved") told.delays.push(delay);
  });
  // the page may be gone before the plan is through: that is what is tried
  page
    .evaluate(typeInPage, { held, field: FIELD, first: FIRST, step: STEP, edit, pauses })
    .catch(() => undefined)
    .finally(begun);
  await beginning;
  return told;
}

/** The edit that the field holds. */
export async function heldEdit(page: Page): Promise<number> {
  const field = page.locator(`[data-field="${FIELD}"]`).first();
  const text = await field.evaluate((input: HTMLInputElement) => {
    input.focus();
    return new Promise<string>((resolve) => requestAnimationFrame(() => resolve(input.value)));
  });
  return editOf(Number(text));
}
