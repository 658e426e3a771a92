import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { begin } from "./support/begin";
import { violations } from "./support/violations";

async function fromMenu(page: Page, entry: string): Promise<void> {
  await page.getByRole("button", { name: "Designs and files" }).click();
  await page.getByRole("menuitem", { name: entry }).click();
}

it("brings a deleted design back from the bin, and an earlier version of one that was edited", async () => {
  const { page, faults } = await begin();
  const title = page.getByLabel("Title of the design");
  const turns = page.locator('[data-field="secondary.turns"]');
  const [deleted, wound] = [await title.inputValue(), await turns.inputValue()];
  await turns.fill("1500");
  await turns.press("Enter");
  await fromMenu(page, "Delete");
  await page.getByText(`“${deleted}” is no longer in the show`).waitFor();
  expect(await title.inputValue()).not.toBe(deleted);

  // another day: what was deleted is found in the bin, with what was changed in it
  await page.waitForFunction(() => document.querySelector('[role="status"]')?.textContent === "Saved");
  await page.reload();
  await page.goto(new URL("#bin", page.url()).href);
  await page.getByRole("button", { name: new RegExp(`Today.*${deleted}.*deleted`) }).click();
  await page.getByText("This design is no longer in the show").waitFor();
  expect(await violations(page)).toEqual([]);
  await page.getByRole("button", { name: "Restore" }).click();
  await page.getByText(`“${deleted}” is restored`).waitFor();
  await page.getByRole("button", { name: "Back to the bench" }).click();
  expect(await title.inputValue()).toBe(deleted);
  expect(await turns.inputValue()).toBe("1500");

  await turns.fill("1600");
  await turns.press("Enter");
  await fromMenu(page, "Versions and bin");
  await page.getByRole("tab", { name: /^Bin/ }).click();
  await page
    .getByRole("button", { name: new RegExp(deleted) })
    .first()
    .click();
  const row = page.getByRole("row", { name: /Turns/ });
  expect((await row.getByRole("cell").allInnerTexts()).map(Number.parseFloat)).toEqual([1500, 1600]);
  await page.getByRole("button", { name: "Empty bin" }).click();
  await page.getByRole("dialog").getByRole("button", { name: "Empty bin" }).click();
  await page.getByText("The bin is empty. Deleted and replaced").waitFor();
  expect(wound).not.toBe("1500");
  expect(faults).toEqual([]);
});

it("has the newest state and the bin again when the browser has lost its storage, part after part", async () => {
  const { page, faults } = await begin();
  const title = page.getByLabel("Title of the design");
  const deleted = await title.inputValue();
  await fromMenu(page, "Delete");
  const turns = page.locator('[data-field="secondary.turns"]');
  await turns.fill("1400");
  await turns.press("Enter");
  await page.waitForFunction(() => document.querySelector('[role="status"]')?.textContent === "Saved");
  const session = await page.context().newCDPSession(page);
  for (const storageTypes of ["indexeddb", "local_storage", "cache_storage", "indexeddb,local_storage"]) {
    await session.send("Storage.clearDataForOrigin", { origin: new URL(page.url()).origin, storageTypes });
    await page.reload();
    await turns.waitFor();
    expect(await turns.inputValue(), `${storageTypes} cleared`).toBe("1400");
    // what is put back is on its way
    await page.waitForTimeout(500);
  }
  await page.goto(new URL("#bin", page.url()).href);
  await page.getByRole("button", { name: new RegExp(`Today.*${deleted}.*deleted`) }).waitFor();
  expect(faults).toEqual([]);
});
