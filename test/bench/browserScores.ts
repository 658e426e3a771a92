/** What long scores cost the page: opening, cancelling, playing and writing them. */
import type { Page } from "playwright-core";
import { bigScore } from "./bigScore";
import { inWords, longestTask, watchLongTasks } from "./longTasks";

/** ms */
const PATIENCE = 300_000;

function column(name: string): string {
  return `  ${name}`.padEnd(42);
}

async function choose(page: Page, notes: number): Promise<void> {
  const buffer = Buffer.from(bigScore(notes));
  await page
    .getByLabel("Open a Standard MIDI File")
    .setInputFiles({ name: `${notes} notes.mid`, mimeType: "audio/midi", buffer });
}

/** ms from the choice of the file until it can be played, and the longest task until all is drawn. */
async function opening(page: Page, notes: number): Promise<void> {
  await watchLongTasks(page);
  const begun = performance.now();
  await choose(page, notes);
  await page.getByRole("heading", { name: `${notes} notes.mid` }).waitFor({ timeout: PATIENCE });
  const readable = performance.now() - begun;
  await page.getByRole("button", { name: "Play", exact: true }).waitFor({ timeout: PATIENCE });
  const playable = performance.now() - begun;
  await page.getByRole("img", { name: "Piano roll of the Right coil" }).waitFor({ timeout: PATIENCE });
  console.log(
    `${column("opened")} parts after ${readable.toFixed(0)} ms, playable after ${playable.toFixed(0)} ms`,
  );
  console.log(`${column("longest main-thread task meanwhile")} ${inWords(await longestTask(page))}`);
}

/** ms from the press of Cancel until the page has answered it, as the page itself sees it. */
function pressCancel(page: Page, name: string): Promise<number> {
  return page.getByRole("button", { name }).evaluate(
    (button: HTMLElement) =>
      new Promise<number>((resolve) => {
        const pressed = performance.now();
        button.click();
        const answered = () => {
          if (button.isConnected) requestAnimationFrame(answered);
          else resolve(performance.now() - pressed);
        };
        answered();
      }),
  );
}

async function cancelling(page: Page): Promise<void> {
  await page
    .getByRole("spinbutton", { name: /^Level/ })
    .or(page.getByRole("textbox", { name: /^Level/ }))
    .first()
    .fill("0.9");
  await page.keyboard.press("Enter");
  const cancel = page.getByRole("button", { name: "Cancel: Gate schedule" });
  const shown = await cancel.waitFor({ timeout: 5000 }).then(
    () => true,
    () => false,
  );
  if (!shown) {
    console.log(`${column("cancel of a new schedule")} nothing to cancel: it took less than half a second`);
    return;
  }
  const took = await pressCancel(page, "Cancel: Gate schedule");
  console.log(`${column("cancel of a new schedule")} answered after ${took.toFixed(0)} ms`);
  await page.getByRole("button", { name: "Make it anew" }).click();
  await page.getByText("older than the lanes").waitFor({ state: "detached" });
  await page
    .getByRole("button", { name: "Gate schedule (CSV)", disabled: false })
    .waitFor({ timeout: PATIENCE });
}

async function writing(page: Page, button: string): Promise<void> {
  await watchLongTasks(page);
  const begun = performance.now();
  const coming = page.waitForEvent("download", { timeout: PATIENCE });
  await page.getByRole("button", { name: button }).click();
  await coming;
  const took = performance.now() - begun;
  console.log(
    `${column(button)} ${took.toFixed(0)} ms beside the page, longest task ${inWords(await longestTask(page))}`,
  );
}

async function playing(page: Page): Promise<void> {
  await watchLongTasks(page);
  await page.getByRole("button", { name: "Play", exact: true }).click();
  await page.waitForTimeout(2000);
  await page.getByRole("button", { name: "Pause" }).click();
  console.log(`${column("played for two seconds")} longest task ${inWords(await longestTask(page))}`);
}

/** Prints what one score costs; the page must have the cautions behind it. */
export async function benchScore(page: Page, notes: number): Promise<void> {
  console.log(`a score of eight parts and ${notes} notes:`);
  await page.getByRole("tab", { name: "Score" }).click();
  await opening(page, notes);
  await playing(page);
  await writing(page, "Gate schedule (CSV)");
  await writing(page, "Gate wave (WAV)");
  await cancelling(page);
}
