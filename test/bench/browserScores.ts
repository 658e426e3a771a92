/**
 * What long scores cost the page: opening, playing, writing and cancelling them. All is pressed and awaited from
 * within the page: looking from outside would itself keep the main thread busy.
 */
import type { Page } from "playwright-core";
import { bigScore, scoreLength } from "./bigScore";
import { inWords, longestTask, watchLongTasks } from "./longTasks";

const PATIENCE = 600_000;

interface Helpers {
  file: File;
  /** resolves with ms from now, once something that fits is there */
  until(selector: string, text?: string): Promise<number>;
  /** the button that is labelled so */
  button(label: string): HTMLButtonElement | undefined;
}

type WithHelpers = Window & { bench: Helpers };

async function addHelpers(page: Page, notes: number): Promise<void> {
  const bytes = Buffer.from(bigScore(notes)).toString("base64");
  await page.evaluate(
    ({ bytes, name }) => {
      const found = (selector: string, text: string) =>
        [...document.querySelectorAll<HTMLElement>(selector)].find((each) =>
          each.textContent?.includes(text),
        );
      const helpers: Helpers = {
        file: new File([Uint8Array.from(atob(bytes), (sign) => sign.charCodeAt(0))], name),
        until: (selector, text = "") =>
          new Promise((resolve) => {
            const begun = performance.now();
            const look = () => {
              if (found(selector, text)) resolve(performance.now() - begun);
              else setTimeout(look, 10);
            };
            look();
          }),
        button: (label) =>
          document.querySelector<HTMLButtonElement>(`button[aria-label="${label}"]`) ??
          (found("button", label) as HTMLButtonElement | undefined),
      };
      Object.assign(window, { bench: helpers });
    },
    { bytes, name: `${notes} notes.mid` },
  );
}

function told(what: string, words: string): void {
  console.log(`${`  ${what}`.padEnd(42)} ${words}`);
}

/** ms from the choice of the file until its parts stand there, and until it can be played and seen. */
function chosen(page: Page, notes: number): Promise<{ parts: number; playable: number }> {
  const seconds = Math.floor(scoreLength(notes));
  const clock = `/ ${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
  return page.evaluate(async (clock) => {
    const { bench } = window as unknown as WithHelpers;
    const input = document.querySelector<HTMLInputElement>('input[type="file"][accept*="midi"]');
    if (!input) throw new Error("there is no way to open a score");
    const chosenFiles = new DataTransfer();
    chosenFiles.items.add(bench.file);
    input.files = chosenFiles.files;
    input.dispatchEvent(new Event("change", { bubbles: true }));
    const parts = await bench.until("h2", bench.file.name);
    // the score before it may still be in sight: the player's clock tells them apart
    const length = await bench.until("output", clock);
    return { parts, playable: parts + length + (await bench.until('canvas[aria-label*="Right"]')) };
  }, clock);
}

async function opening(page: Page, notes: number): Promise<void> {
  await watchLongTasks(page);
  const { parts, playable } = await chosen(page, notes);
  told("opened", `parts after ${parts.toFixed(0)} ms, playable after ${playable.toFixed(0)} ms`);
  told("  longest main-thread task meanwhile", inWords(await longestTask(page)));
}

async function playing(page: Page): Promise<void> {
  await watchLongTasks(page);
  const press = (label: string) =>
    page.evaluate((name) => (window as unknown as WithHelpers).bench.button(name)?.click(), label);
  await press("Play");
  await page.waitForTimeout(2000);
  await press("Pause");
  told("played for two seconds", `longest task ${inWords(await longestTask(page))}`);
}

async function writing(page: Page, label: string): Promise<void> {
  await watchLongTasks(page);
  const coming = page.waitForEvent("download", { timeout: PATIENCE });
  const begun = performance.now();
  await page.evaluate((name) => (window as unknown as WithHelpers).bench.button(name)?.click(), label);
  await coming;
  const took = performance.now() - begun;
  told(label, `${took.toFixed(0)} ms beside the page, longest task ${inWords(await longestTask(page))}`);
}

const CANCEL = "Cancel: Gate schedule";

/** ms from the press of Cancel until it has gone; null where the schedule was there before it could be pressed. */
function cancelled(page: Page): Promise<number | null> {
  return page.evaluate(async (label) => {
    const { bench } = window as unknown as WithHelpers;
    const cancel = `[aria-label="${label}"]`;
    const shown = bench.until(cancel).then(() => true);
    const late = new Promise<boolean>((resolve) => setTimeout(resolve, 5000, false));
    const button = (await Promise.race([shown, late])) && bench.button(label);
    if (!button) return null;
    const pressed = performance.now();
    button.click();
    return new Promise<number>((resolve) => {
      const look = () => {
        if (document.querySelector(cancel)) requestAnimationFrame(look);
        else resolve(performance.now() - pressed);
      };
      look();
    });
  }, CANCEL);
}

/** Both coils play the first part: the schedules are made anew. */
function newSchedule(page: Page): Promise<void> {
  return page.evaluate(() => {
    const coil = document.querySelector<HTMLSelectElement>('select[aria-label^="Destination"]');
    if (!coil) throw new Error("there is no lane");
    coil.value = "both";
    coil.dispatchEvent(new Event("change", { bubbles: true }));
  });
}

const SCORE_WORKER = "**/assets/score.worker-*.js";
/** Three seconds in which the worker does not get on, as on a much slower device. */
const HELD_UP = "for (const until = performance.now() + 3000; performance.now() < until; );";

/** The page opened anew with its score, while the worker that makes the schedule is held up. */
async function openedHeldUp(page: Page, notes: number): Promise<void> {
  await page.route(SCORE_WORKER, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: `${HELD_UP}${await response.text()}` });
  });
  await page.reload();
  await page.getByRole("tab", { name: "Score" }).click();
  await addHelpers(page, notes);
}

async function cancelling(page: Page, notes: number): Promise<void> {
  await newSchedule(page);
  const answer = await cancelled(page);
  const words = (ms: number) => `answered after ${ms.toFixed(0)} ms`;
  told(
    "cancel of a new schedule",
    answer === null ? "nothing to cancel: it was there at once" : words(answer),
  );
  if (answer !== null) return;
  await openedHeldUp(page, notes);
  const later = await cancelled(page);
  told("  the same with a worker held up", later === null ? "nothing to cancel" : words(later));
  await page.unroute(SCORE_WORKER);
}

/** Prints what one score costs; the page must have the cautions behind it. */
export async function benchScore(page: Page, notes: number): Promise<void> {
  page.setDefaultTimeout(PATIENCE);
  console.log(`a score of eight parts and ${notes} notes:`);
  await page.getByRole("tab", { name: "Score" }).click();
  await page.getByLabel("Open a Standard MIDI File").waitFor();
  await addHelpers(page, notes);
  await page.waitForTimeout(1000);
  await opening(page, notes);
  await playing(page);
  await writing(page, "Gate schedule (CSV)");
  await writing(page, "Gate wave (WAV)");
  await cancelling(page, notes);
}
