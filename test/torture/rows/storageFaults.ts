/**
 * Storage that is full, denied, silent, cleared or holds what nobody expects: the bench comes up, takes an
 * edit, and either keeps it (“Kept” where local storage alone does, which a closed page survives), or says that it does not, asks before it is left and gives out the file.
 */
import { readFileSync } from "node:fs";
import type { BrowserContext, Page } from "playwright-core";
import type { Design } from "../../../src/design/design";
import type { Lab } from "../lab";
import type { TortureRow } from "../row";
import { type Bench, noticesOf, openBench, signOf, typeInto } from "../support/bench";
import { editOf, FIELD, heldEdit, typedAs } from "../support/editor";
import { newRandom } from "../support/random";
import { putContent, SHOW_ENTRY, STORAGE_FAULTS, type StorageFault } from "../support/storageFaults";

/** ms for the sign to come to rest */
const SETTLING = 6000;

function type(page: Page, edit: number): Promise<void> {
  return typeInto(page, FIELD, String(typedAs(edit)));
}

/** Whether the page asks before it is left. */
async function asksBeforeLeaving(page: Page): Promise<boolean> {
  const asked = page.waitForEvent("dialog", { timeout: 1500 }).then(
    async (dialog) => {
      await dialog.dismiss();
      return true;
    },
    () => false,
  );
  await page.close({ runBeforeUnload: true });
  return asked;
}

/** The edit in the design's file as the page gives it out. */
async function exportedEdit(page: Page): Promise<number> {
  const [download] = await Promise.all([
    page.waitForEvent("download", { timeout: 5000 }),
    page.keyboard.press("Control+s"),
  ]);
  const design = JSON.parse(readFileSync(await download.path(), "utf8")) as Design;
  return editOf(1000 * design.secondary.windingLength);
}

async function keptIsThere(context: BrowserContext, address: string, edit: number): Promise<string | null> {
  const { page } = await openBench(context, address);
  const held = await heldEdit(page);
  await page.close();
  return held === edit
    ? null
    : `“Saved” or “Kept” stood there, and ${typedAs(held)} mm came back for ${typedAs(edit)} mm`;
}

/** What a newer program has kept is shown to be there, and stays as it is. */
async function readOnlyFault(page: Page, fault: StorageFault): Promise<string | null> {
  if ((await noticesOf(page)).length === 0) return "no notice says why nothing can be changed";
  if (await page.locator(`[data-field="${FIELD}"]`).first().isEnabled())
    return "what is newer could be written over";
  const kept = await page.evaluate((key) => localStorage.getItem(key), SHOW_ENTRY);
  return kept === fault.content ? null : "what the newer program had kept was changed";
}

/** What is wrong in one try, null where nothing is. */
async function tryFault(context: BrowserContext, address: string, fault: StorageFault, edit: number) {
  const before = async (page: Page) => {
    if (fault.content !== undefined)
      await page.addInitScript(putContent, [SHOW_ENTRY, fault.content] as [string, string]);
    if (fault.before) await page.addInitScript(fault.before);
  };
  const { page, faults }: Bench = await openBench(context, address, before);
  if (fault.readOnly) return (await readOnlyFault(page, fault)) ?? faults[0] ?? null;
  if (fault.after) await page.evaluate(fault.after);
  await type(page, edit);
  const sign = await signOf(page, SETTLING);
  const notices = await noticesOf(page);
  if (faults.length > 0) return faults[0];
  if ((await heldEdit(page)) !== edit) return "the edit did not stay in its field";
  if ((await exportedEdit(page)) !== edit) return "the exported file lacks the edit";
  if (sign === "Kept" && notices.length === 0)
    return "the show is in local storage alone, and no notice says so";
  if (sign === "Saved" || sign === "Kept") {
    await page.close();
    return keptIsThere(context, address, edit);
  }
  if (notices.length === 0) return `the sign says “${sign}”, and no notice says why`;
  return (await asksBeforeLeaving(page))
    ? null
    : `the sign says “${sign}”, and the page closes without a question`;
}

async function run(tries: number, seed: number, lab: Lab) {
  const random = newRandom(seed);
  const losses: string[] = [];
  let slowest = 0;
  for (let index = 0; index < tries; index++) {
    const fault = STORAGE_FAULTS[index % STORAGE_FAULTS.length];
    const context = await lab.newContext();
    const began = Date.now();
    const wrong = await tryFault(context, lab.address, fault, random.whole(1, 90_000)).catch(String);
    slowest = Math.max(slowest, Date.now() - began);
    if (wrong !== null) losses.push(`${fault.name}: ${wrong}`);
    await context.close();
  }
  return { tried: tries, lost: losses.length, worst: `slowest try ${(slowest / 1000).toFixed(1)} s`, losses };
}

export const storageFaults: TortureRow = {
  name: "storage full, denied, silent or strange",
  full: 4 * STORAGE_FAULTS.length,
  short: 1,
  run,
};
