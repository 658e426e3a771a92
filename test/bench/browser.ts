/**
 * npm run bench:browser: what an edit costs the page's main thread while all charts are in sight, at full
 * speed and at a quarter of it. No test depends on these figures.
 */
import { type CDPSession, chromium, type Page } from "playwright-core";
import { launching } from "../browser/support/launching";
import { serve } from "../browser/support/serve";
import { benchScore } from "./browserScores";
import { benchDrag } from "./drag";
import { inWords, longestTask, watchLongTasks } from "./longTasks";

const PRESSES = 80;
const WARM_UP = 20;
const TALL = { width: 1440, height: 2600 };
async function metric(session: CDPSession, name: string): Promise<number> {
  const { metrics } = await session.send("Performance.getMetrics");
  return metrics.find((each) => each.name === name)?.value ?? 0;
}

/** Waits until the page has shown what a press changed. */
function settled(page: Page): Promise<void> {
  return page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 60))));
}

async function press(page: Page, count: number): Promise<void> {
  for (let index = 0; index < count; index++) {
    await page.keyboard.press(index % 40 < 20 ? "ArrowRight" : "ArrowLeft");
    await settled(page);
  }
}

interface Cost {
  /** ms a step, script alone */
  script: number;
  /** ms a step, layout and paint included */
  task: number;
  /** ms */
  longest: number;
}

async function measured(page: Page, session: CDPSession): Promise<Cost> {
  await page.getByRole("slider", { name: "Tap on the primary" }).focus();
  await press(page, WARM_UP);
  await watchLongTasks(page);
  const durations = () =>
    Promise.all(["ScriptDuration", "TaskDuration"].map((name) => metric(session, name)));
  const before = await durations();
  await press(page, PRESSES);
  const [script, task] = (await durations()).map(
    (value, index) => ((value - before[index]) * 1000) / PRESSES,
  );
  return { script, task, longest: await longestTask(page) };
}

function line(name: string, { script, task, longest }: Cost): string {
  return `${name.padEnd(42)} script ${script.toFixed(2)} ms   main thread ${task.toFixed(2)} ms   longest task ${inWords(longest)}`;
}

/** The views with charts, each with one that is there when all are. */
const VIEWS = [
  { tab: "Charts", charts: "five charts", last: /^Bridge current/ },
  { tab: "Burst", charts: "three charts of a burst", last: /^Running frequency/ },
];

async function everyView(page: Page, session: CDPSession, rate: number): Promise<void> {
  await session.send("Emulation.setCPUThrottlingRate", { rate });
  await page.getByRole("tab", { name: "Line-up" }).click();
  const without = await measured(page, session);
  console.log(line(`1/${rate} speed, without charts`, without));
  for (const { tab, charts, last } of VIEWS) {
    await page.getByRole("tab", { name: tab }).click();
    await page.getByRole("img", { name: last }).waitFor();
    const all = await measured(page, session);
    console.log(line(`1/${rate} speed, with the ${charts}`, all));
    console.log(
      `${"  their share".padEnd(42)} script ${(all.script - without.script).toFixed(2)} ms   main thread ${(all.task - without.task).toFixed(2)} ms`,
    );
  }
}

const HANDLES = ["Tap on the primary", "Diameter of toroid 1"];
/** Four minutes, and fifty, of eight parts. */
const SCORES = [7680, 96_000];

/** Prints a line for each speed; the page must be built. */
export async function benchBrowser(): Promise<void> {
  const server = await serve();
  const browser = await chromium.launch(launching());
  const page = await browser.newPage({ viewport: TALL });
  await page.goto(server.address);
  const dialog = page.getByRole("dialog");
  await dialog.waitFor();
  for (const box of await dialog.getByRole("checkbox").all()) await box.check();
  await dialog.getByRole("button").last().click();
  await page.getByRole("img", { name: /^Bridge current/ }).waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable");
  console.log("one step of the tap, with drawing, numbers and charts in sight, per step:");
  for (const rate of [1, 4]) await everyView(page, session, rate);
  await session.send("Emulation.setCPUThrottlingRate", { rate: 1 });
  for (const handle of HANDLES) await benchDrag(page, handle);
  for (const notes of SCORES) await benchScore(page, notes);
  await browser.close();
  await server.close();
}
