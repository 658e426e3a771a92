/**
 * Every number field of the page at values that no coil has: the page stays, answers, and shows no raw value.
 * The values that did most harm once are kept, and the page comes up with them again.
 */
import type { Page } from "playwright-core";
import type { Lab } from "../lab";
import type { RowResult, TortureRow } from "../row";
import { type Bench, openBench, signOf } from "../support/bench";

const VALUES = ["1e30", "-1e-300", "0", "1e-300", "1e-30", "-1e-30", "-1", "1e9", "1e300"] as const;

/** more than can be absent */
const ALL_PARTS = 20;

/** ms after which a page that has not answered hangs */
const HANGS = 20_000;

interface Typed {
  /** ms until the page drew again */
  took: number;
  /** what must not be read on a page; empty where all is well */
  raw: string;
  /** whether the bench is still there */
  stands: boolean;
}

/** Runs in the page: opens every panel, adds parts that are absent, and gives each number field a number. */
async function openEverything(parts: number): Promise<number> {
  const drawn = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 30)));
  for (const panel of document.querySelectorAll("details")) panel.open = true;
  await drawn();
  for (let round = 0; round < parts; round++) {
    const add = [...document.querySelectorAll<HTMLButtonElement>("details button")].find(
      (button) => button.textContent?.trim() === "Add" && !button.disabled,
    );
    if (!add) break;
    add.click();
    await drawn();
  }
  const fields = [...document.querySelectorAll<HTMLInputElement>('input[inputmode="decimal"]')];
  for (const [index, field] of fields.entries()) field.dataset.torture = String(index);
  return fields.length;
}

/** Runs in the page: types a text into a field, looks at the page, and takes it back. */
async function typeAndLook([index, text]: [number, string]): Promise<Typed> {
  const RAW =
    /\b(NaN|undefined|Infinity|TypeError|RangeError|ReferenceError|Cannot read|Invalid array length|toFixed)\b|\[object/;
  const field = document.querySelector<HTMLInputElement>(`input[data-torture="${index}"]`);
  if (!field) return { took: 0, raw: "", stands: document.querySelector("main") !== null };
  const setText = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
  const press = (key: string, ctrlKey = false) =>
    field.dispatchEvent(new KeyboardEvent("keydown", { key, ctrlKey, bubbles: true, cancelable: true }));
  const drawn = (ms: number) =>
    new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, ms)));
  field.focus();
  const before = field.value;
  setText?.call(field, text);
  field.dispatchEvent(new Event("input", { bubbles: true }));
  await Promise.resolve();
  const began = performance.now();
  press("Enter");
  await drawn(0);
  const took = performance.now() - began;
  await drawn(90);
  const words =
    document.body.innerText +
    [...document.querySelectorAll("svg text")].map((each) => each.textContent).join(" ");
  const raw = RAW.exec(words)?.[0] ?? "";
  const stands = document.querySelector("main") !== null && words.length > 500;
  press("Escape");
  if (field.value !== before) press("z", true);
  await drawn(0);
  return { took, raw, stands };
}

/** What a page answers, null where it hangs. */
function orHangs<Value>(answer: Promise<Value>): Promise<Value | null> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const hanging = new Promise<null>((resolve) => {
    timer = setTimeout(() => resolve(null), HANGS);
  });
  return Promise.race([answer, hanging]).finally(() => clearTimeout(timer));
}

/** The views that hold number fields besides the panels, and what brings them there. */
const VIEWS: readonly ((page: Page) => Promise<void>)[] = [
  // the one that the page begins with
  async () => undefined,
  async (page) => {
    await page.getByRole("tab", { name: "Line-up" }).click();
    await page.getByLabel("Stock size").selectOption({ index: 1 });
    await page.waitForTimeout(300);
  },
  async (page) => {
    await page.getByRole("tab", { name: "Score" }).click();
    await page.waitForTimeout(500);
  },
];

interface Account {
  tried: number;
  /** fields that were tried in an earlier view */
  known: Set<string>;
  slowest: number;
  losses: string[];
}

async function sweep({ page, faults }: Bench, most: number, account: Account): Promise<void> {
  const count = await page.evaluate(openEverything, most > VALUES.length ? ALL_PARTS : 0);
  const names = await page
    .locator("input[data-torture]")
    .evaluateAll((fields) =>
      fields.map((field) => field.dataset.field ?? field.getAttribute("aria-label") ?? "?"),
    );
  for (let index = 0; index < count; index++) {
    if (account.known.has(names[index])) continue;
    account.known.add(names[index]);
    for (const text of VALUES) {
      if (account.tried >= most) return;
      account.tried++;
      const what = `${names[index]} = ${text}`;
      const answer = await orHangs(page.evaluate(typeAndLook, [index, text] as [number, string]));
      if (answer === null) {
        account.losses.push(`${what}: the page hangs`);
        return;
      }
      const { took, raw, stands } = answer;
      account.slowest = Math.max(account.slowest, took);
      if (!stands) account.losses.push(`${what}: the page is empty`);
      else if (raw !== "") account.losses.push(`${what}: the page says “${raw}”`);
      else if (faults.length > 0) account.losses.push(`${what}: ${faults[0]}`);
      faults.length = 0;
      if (!stands) return;
    }
  }
}

/** Values that emptied a page for good once, kept, and the page opened again. */
const KEPT = [
  ["secondary.windingLength", "1e30 m"],
  ["secondary.turns", "1e-30"],
  ["primary.tap", "1e300"],
  ["primary.turns", "1e9"],
  ["tank.dissipationFactor", "1e30"],
] as const;

async function reopen(lab: Lab, account: Account): Promise<void> {
  for (const [path, text] of KEPT) {
    const context = await lab.newContext();
    const { page } = await openBench(context, lab.address);
    const field = page.locator(`[data-field="${path}"]`).first();
    if ((await field.count()) > 0) {
      await page.evaluate(openEverything, ALL_PARTS);
      await field.fill(text);
      await field.press("Enter");
      const sign = await signOf(page, 15_000, ["Saved"]);
      if (sign !== "Saved") account.losses.push(`${path} = ${text}: the sign says “${sign}”`);
      await page.close();
      account.tried++;
      const again = await openBench(context, lab.address).catch(String);
      if (typeof again === "string")
        account.losses.push(`${path} = ${text} was kept: the page does not come up again`);
      else if (again.faults.length > 0) account.losses.push(`${path} = ${text} was kept: ${again.faults[0]}`);
    }
    await context.close();
  }
}

async function run(tries: number, _seed: number, lab: Lab): Promise<RowResult> {
  const account: Account = { tried: 0, known: new Set(), slowest: 0, losses: [] };
  for (const view of VIEWS) {
    if (account.tried >= tries) break;
    const context = await lab.newContext();
    const bench = await openBench(context, lab.address);
    await view(bench.page);
    await sweep(bench, tries, account);
    await context.close();
  }
  if (account.tried < tries) await reopen(lab, account);
  return {
    tried: account.tried,
    lost: account.losses.length,
    worst: `${account.known.size} fields, slowest answer ${account.slowest.toFixed(0)} ms`,
    losses: account.losses.slice(0, 40),
  };
}

export const numberFields: TortureRow = { name: "number fields at extremes", full: 10_000, short: 2, run };
