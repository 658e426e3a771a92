/**
 * Each worker is broken in each way a worker can be: the page says what was computed and came to nothing, goes on,
 * and computes once the worker is whole again. Its script is exchanged on its way from the server.
 */
import type { BrowserContext, Page } from "playwright-core";
import { bigScore } from "../../bench/bigScore";
import type { Lab } from "../lab";
import type { RowResult, TortureRow } from "../row";
import { noticesOf, openBench } from "../support/bench";

/** ms: the watch's ten seconds, and what a busy machine adds */
const TOLD_WITHIN = 30_000;
const PATIENCE = 60_000;

/** Scripts of workers that are out of order. */
const FAULTS = {
  "throws when it starts": "throw new Error('broken on purpose');",
  "throws when it is asked": "self.onmessage = () => { throw new Error('broken on purpose'); };",
  "ends silently": "self.onmessage = () => self.close();",
  "never answers": "self.onmessage = () => undefined;",
  "hangs in a loop": "self.onmessage = () => { for (;;); };",
  "sends rubbish": "self.onmessage = () => self.postMessage('rubbish');",
  "says that it failed": "self.onmessage = ({ data }) => self.postMessage({ id: data.id, failure: true });",
  "does not load": null,
} as const;

type Fault = keyof typeof FAULTS;

interface Kind {
  /** name of the worker's file */
  file: string;
  /** how the notice begins */
  told: RegExp;
  /** makes the page need the worker */
  use(page: Page): Promise<void>;
  /** is there once the worker has done its work */
  done(page: Page): Promise<void>;
}

async function openScore(page: Page): Promise<void> {
  await page.getByRole("tab", { name: "Score" }).click();
  await page
    .getByLabel("Open a Standard MIDI File")
    .setInputFiles({ name: "torture.mid", mimeType: "audio/midi", buffer: Buffer.from(bigScore(80)) });
}

async function tuneAgainst(page: Page, abscissa: string): Promise<void> {
  await page.getByRole("tab", { name: "Charts" }).click();
  await page.getByLabel("Tuning against").selectOption(abscissa);
}

async function openPart(page: Page, title: string): Promise<void> {
  await page.getByRole("tab", { name: "Score" }).click();
  await page.getByRole("heading", { name: title }).click();
}

const there = (page: Page, text: RegExp) => page.getByText(text).first().waitFor({ timeout: PATIENCE });

const KINDS: readonly Kind[] = [
  {
    file: "evaluation",
    told: /^The evaluation of the design/,
    use: async () => undefined,
    done: (page) =>
      page
        .locator('[aria-label="Key numbers"]')
        .getByText(/\d{3}\.\d/)
        .first()
        .waitFor({ timeout: PATIENCE }),
  },
  {
    file: "energySweep",
    told: /^The sweep of bursts/,
    use: (page) => tuneAgainst(page, "tap, energy into the spark"),
    done: (page) => there(page, /^Most energy: /),
  },
  {
    file: "scoreReading",
    told: /^The reading of the score/,
    use: openScore,
    done: (page) => page.getByRole("heading", { name: "torture.mid" }).waitFor({ timeout: PATIENCE }),
  },
  {
    file: "score",
    told: /^The computation of the gate schedule/,
    use: openScore,
    done: (page) =>
      page.getByRole("img", { name: "Piano roll of the Right coil" }).waitFor({ timeout: PATIENCE }),
  },
  {
    file: "coilLoads",
    told: /^The computation of the load of the bursts/,
    use: (page) => openPart(page, "Live keyboard"),
    done: (page) => page.getByRole("button", { name: "Silence" }).waitFor({ timeout: PATIENCE }),
  },
  {
    file: "pair",
    told: /^The computation of the pair/,
    use: (page) => openPart(page, "The pair of coils"),
    done: (page) => there(page, /The pair resonates at/),
  },
  {
    file: "quietLead",
    told: /^The search for the lead time/,
    async use(page) {
      await page.locator("summary", { hasText: /^Switches and control$/ }).click();
      await page.getByRole("button", { name: "Search" }).click();
    },
    done: (page) => there(page, /has the least turn-off current over whole bursts/),
  },
  {
    file: "gateFile",
    told: /^The export of the gate file/,
    async use(page) {
      await openScore(page);
      await page.getByRole("button", { name: "Gate schedule (CSV)" }).click({ timeout: PATIENCE });
    },
    async done(page) {
      await page.waitForEvent("download", { timeout: PATIENCE });
    },
  },
];

/** The notice of the trouble; what else is told, as of storage, is not its business. */
async function noticeOf(page: Page, told: RegExp): Promise<string | null> {
  const since = performance.now();
  while (performance.now() - since < TOLD_WITHIN) {
    const lines = (await noticesOf(page)).flatMap((notice) => notice.split("\n").map((each) => each.trim()));
    const found = lines.find((each) => told.test(each.replace(/^Error: /, "")));
    if (found) return found;
    await page.waitForTimeout(100);
  }
  return null;
}

/** What must never be read on a page. */
const RAW = /\b(NaN|undefined|Infinity|TypeError|ReferenceError)\b|\[object|broken on purpose/;

/** Whether the rest of the bench goes on: a field takes a number, and the number can be taken back. */
async function goesOn(page: Page): Promise<string | null> {
  await page.locator('[role=slider][aria-label="Tap on the primary"]').first().press("ArrowRight");
  await page.locator('header button[aria-label^="Undo"]').first().click({ timeout: PATIENCE });
  const words = await page.evaluate(() => document.body.innerText);
  const raw = RAW.exec(words);
  return raw && `the page says “${raw[0]}”`;
}

/** Presses what the notice offers, once more where an edit had already asked the broken worker. */
async function mended(page: Page, kind: Kind): Promise<string | null> {
  const again = page.locator("header [data-notice] button").filter({ hasText: AGAIN });
  const done = kind.done(page).then(
    () => null,
    (error) => `it does not come back: ${String(error).split("\n")[0]}`,
  );
  let waiting = true;
  void done.then(() => {
    waiting = false;
  });
  while (waiting) {
    if ((await again.count()) > 0)
      await again
        .first()
        .click({ timeout: 1000 })
        .catch(() => undefined);
    await page.waitForTimeout(100);
  }
  return done;
}

const AGAIN = /^(Compute again|Wait longer)$/;

async function tryOne(context: BrowserContext, lab: Lab, kind: Kind, fault: Fault): Promise<string | null> {
  const script = `**/assets/${kind.file}.worker-*.js`;
  const body = FAULTS[fault];
  await context.route(script, (route) =>
    body === null ? route.abort() : route.fulfill({ contentType: "text/javascript", body }),
  );
  const { page } = await openBench(context, lab.address);
  await kind.use(page);
  const told = await noticeOf(page, kind.told);
  if (!told) return `nothing was told within ${TOLD_WITHIN / 1000} s`;
  const stuck = await goesOn(page);
  if (stuck) return stuck;
  await context.unroute(script);
  return mended(page, kind);
}

/** Every worker with every fault, the quick ones first: a short run tries different workers. */
function combinations(): { kind: Kind; fault: Fault }[] {
  const faults = Object.keys(FAULTS) as Fault[];
  return faults.flatMap((_, turn) =>
    KINDS.map((kind, index) => ({ kind, fault: faults[(turn + index) % faults.length] })),
  );
}

async function run(tries: number, _seed: number, lab: Lab): Promise<RowResult> {
  const tried = combinations().slice(0, tries);
  const losses: string[] = [];
  let slowest = 0;
  for (const { kind, fault } of tried) {
    const context = await lab.newContext();
    const since = performance.now();
    const wrong = await tryOne(context, lab, kind, fault).catch((error) => String(error).split("\n")[0]);
    slowest = Math.max(slowest, performance.now() - since);
    if (wrong) losses.push(`a worker “${kind.file}” that ${fault}: ${wrong}`);
    await context.close();
  }
  return {
    tried: tried.length,
    lost: losses.length,
    worst: `told and mended after ${(slowest / 1000).toFixed(0)} s at worst`,
    losses,
  };
}

export const workers: TortureRow = { name: "workers that are out of order", full: 64, short: 1, run };
