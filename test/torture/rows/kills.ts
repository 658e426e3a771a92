/**
 * Ends the browser, or one page's process, at random moments of editing; each start that verifies the end
 * before it is the start of the next run. Whatever the screen has called “Saved” must be there, and so must
 * its versions. After a browser was killed its log is made to end within a record, as a kill in the midst of a write
 * leaves it.
 */
import { appendFileSync, existsSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Lab } from "../lab";
import type { TortureRow } from "../row";
import { type Bench, noticesOf, openBench } from "../support/bench";
import { heldEdit, startEditing, type Told, typedAs } from "../support/editor";
import { type OwnBrowser, ownBrowser } from "../support/ownBrowser";
import { newRandom, type Random } from "../support/random";
import { versionLengths } from "../support/versions";

type Ending = "browser killed" | "page crashed" | "browser closed" | "page closed";

/** Two of five kill the browser, two the page's process, one closes. */
const ENDINGS: readonly Ending[] = [
  "browser killed",
  "page crashed",
  "browser killed",
  "page crashed",
  "browser closed",
  "browser killed",
  "page crashed",
  "browser killed",
  "page crashed",
  "page closed",
];

/** ms after each edit: one at a time, or bursts of them with pauses between. */
function pausesOf(random: Random): number[] {
  if (random.next() < 0.5) return Array.from({ length: 40 }, () => random.between(150, 500));
  return Array.from({ length: 30 }, () => random.whole(3, 15)).flatMap((burst) => [
    ...Array.from({ length: burst }, () => random.between(0, 30)),
    random.between(100, 500),
  ]);
}

/** bytes: a log is written in blocks, and no piece of a record goes over the end of one */
const BLOCK = 32_768;

/** The first piece of a record that fills the rest of a block, with any checksum, and half of what it announces. */
function halfRecord(logSize: number): Buffer {
  const length = BLOCK - (logSize % BLOCK) - 7;
  if (length < 2) return Buffer.alloc(0);
  const head = Buffer.from([1, 2, 3, 4, length & 255, length >> 8, 2]);
  return Buffer.concat([head, Buffer.alloc(length >> 1, 7)]);
}

/** Puts half a record at the end of the newest log of the page's databases. */
function tearLog(profile: string): void {
  const databases = join(profile, "Default", "IndexedDB");
  for (const folder of existsSync(databases) ? readdirSync(databases) : []) {
    const logs = readdirSync(join(databases, folder)).filter((name) => /^\d+\.log$/.test(name));
    const newest = logs.sort().at(-1);
    if (!newest) continue;
    const log = join(databases, folder, newest);
    appendFileSync(log, halfRecord(statSync(log).size));
  }
}

async function crash({ page }: Bench): Promise<void> {
  const gone = page.waitForEvent("crash");
  const session = await page.context().newCDPSession(page);
  session.send("Page.crash").catch(() => undefined);
  await gone;
  await page.close();
}

interface Account {
  losses: string[];
  delays: number[];
  /** whether there has been a version */
  hadVersions: boolean;
  /** most edits that were typed, not yet called saved, and gone */
  mostUnsaved: number;
}

/** ms in which versions that were lost must be back */
const COMING_BACK = 5000;

/** Whether all versions have gone, where there have been any. */
async function versionsAreGone({ page }: Bench, account: Account): Promise<boolean> {
  const until = Date.now() + COMING_BACK;
  do {
    if ((await page.evaluate(versionLengths)).length > 0) {
      account.hadVersions = true;
      return false;
    }
  } while (account.hadVersions && Date.now() < until);
  return account.hadVersions;
}

/** What the restart shows against what was told before the end. */
async function verify(bench: Bench, told: Told, how: string, account: Account): Promise<number> {
  const { page, faults } = bench;
  const held = await heldEdit(page);
  const notices = await noticesOf(page);
  if (held < told.saved)
    account.losses.push(
      `${how}: ${typedAs(told.saved)} mm was called saved, ${typedAs(held)} mm is there; ${notices[0] ?? "no notice"}`,
    );
  else if (held > told.planned)
    account.losses.push(`${how}: ${typedAs(held)} mm is there and was never typed`);
  else if (await versionsAreGone(bench, account)) account.losses.push(`${how}: all versions have gone`);
  else if (faults.length > 0) account.losses.push(`${how}: ${faults[0]}`);
  else if (notices.length > 0) account.losses.push(`${how}: ${notices[0]}`);
  account.mostUnsaved = Math.max(account.mostUnsaved, told.typed - Math.max(held, told.first - 1));
  return held;
}

function quantile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

function figures({ delays, mostUnsaved }: Account): string {
  const sorted = [...delays].sort((a, b) => a - b);
  const [half, most, worst] = [0.5, 0.99, 1].map((share) => `${quantile(sorted, share).toFixed(0)} ms`);
  return `edit to “Saved” p50 ${half}, p99 ${most}, worst ${worst} of ${sorted.length}; at most ${mostUnsaved} edits not yet called saved were gone`;
}

async function run(tries: number, seed: number, { address, launch, window }: Lab) {
  const random = newRandom(seed);
  const profile = mkdtempSync(join(tmpdir(), "coilwright-profile-"));
  const account: Account = { losses: [], delays: [], hadVersions: false, mostUnsaved: 0 };
  let browser: OwnBrowser | null = null;
  let told: Told | null = null;
  let how = "";
  let held = 0;
  let edit = 1;
  for (let run = 0; run <= tries; run++) {
    browser ??= await ownBrowser(launch, profile, window);
    const bench = await openBench(browser.context, address);
    if (told) {
      held = await verify(bench, told, how, account);
      edit = told.planned + 1;
    }
    if (run === tries) break;
    told = await startEditing(bench.page, { held, saved: told?.saved ?? 0 }, edit, pausesOf(random));
    await new Promise((resolve) => setTimeout(resolve, random.between(20, 1500)));
    const ending = ENDINGS[run % ENDINGS.length];
    how = `run ${run}, ${ending}`;
    if (ending === "page crashed") await crash(bench);
    else if (ending === "page closed") await bench.page.close();
    else {
      await (ending === "browser killed" ? browser.kill() : browser.close());
      if (ending === "browser killed") tearLog(profile);
      browser = null;
    }
    account.delays.push(...told.delays);
  }
  await browser?.close();
  rmSync(profile, { recursive: true, force: true });
  return {
    tried: tries,
    lost: account.losses.length,
    worst: figures(account),
    losses: account.losses.slice(0, 20),
  };
}

export const kills: TortureRow = { name: "killed while editing", full: 1000, short: 1, run };
