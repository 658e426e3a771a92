import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { openPage } from "./support/page";

/** Runs in the page: whether the worker stands by with its copy of the program. */
async function isKept(): Promise<boolean> {
  const registration = await navigator.serviceWorker.getRegistration();
  const names = await caches.keys();
  return registration?.active?.state === "activated" && names.some((name) => name.includes("precache"));
}

/** Asked over and over, because the browser's own waiting for a function does not await it. */
async function keptIn(page: Page): Promise<void> {
  await expect.poll(() => page.evaluate(isKept), { timeout: 10_000 }).toBe(true);
}

it("opens without a network, also after its copy was cleared and it was opened twice since", async () => {
  const { page, faults } = await openPage({ serviceWorkers: "allow" });
  const drawing = page.locator('main [aria-label^="Cross-section of the coil"]').first();
  await keptIn(page);
  await page.context().setOffline(true);
  await page.reload();
  await drawing.waitFor();
  await page.context().setOffline(false);
  const session = await page.context().newCDPSession(page);
  const { origin } = new URL(page.url());
  await session.send("Storage.clearDataForOrigin", { origin, storageTypes: "cache_storage" });
  await page.reload();
  await expect
    .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length))
    .toBe(0);
  await page.reload();
  await keptIn(page);
  await page.context().setOffline(true);
  await page.reload();
  await drawing.waitFor();
  expect(faults).toEqual([]);
});
