import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { begin } from "./support/begin";
import { violations } from "./support/violations";

async function type(page: Page, path: string, text: string) {
  const field = page.locator(`[data-field="${path}"]`).first();
  await field.fill(text);
  await field.press("Enter");
}

async function openPanels(page: Page, ...titles: string[]) {
  for (const title of titles) await page.locator("summary", { hasText: title }).click();
}

/** Number of a figure of the key numbers, as it is shown. */
async function figure(page: Page, caption: string): Promise<number> {
  const cell = page.getByRole("region", { name: "Key numbers" }).locator("dt", { hasText: caption });
  return Number.parseFloat((await cell.locator("xpath=following-sibling::dd[1]").textContent()) ?? "");
}

function waveform(page: Page): Promise<string | null> {
  return page
    .getByRole("img", { name: /^Primary current/ })
    .locator("path[d]")
    .last()
    .getAttribute("d");
}

const findings = (page: Page) => page.getByRole("region", { name: "Findings" });

describe("the drive in a real browser", () => {
  it("follows bus, limit and on-time with waveform, junction and findings", async () => {
    const { page, faults } = await begin();
    await page.getByRole("tab", { name: "Burst" }).click();
    await openPanels(page, "Supply", "Switches and control", "Drive");
    await page.getByRole("img", { name: /^Primary current/ }).waitFor();
    const [drawn, current, junction] = [
      await waveform(page),
      await figure(page, "Peak primary current"),
      await figure(page, "Peak junction temperature"),
    ];
    expect(current).toBeGreaterThan(400);

    await type(page, "drive.supply.mainsVoltage", "120");
    await expect.poll(() => figure(page, "Peak primary current")).toBeLessThan(0.6 * current);
    await expect.poll(() => figure(page, "Peak junction temperature")).toBeLessThan(junction - 1);
    expect(await waveform(page)).not.toBe(drawn);

    await type(page, "drive.supply.mainsVoltage", "230");
    await type(page, "drive.overCurrentLimit", "300");
    await findings(page)
      .getByText(/over-current limit acts/)
      .waitFor();
    await page
      .getByText(/^Limit reached \d/)
      .first()
      .waitFor();
    await type(page, "drive.overCurrentLimit", "480");
    await findings(page)
      .getByText(/over-current limit acts/)
      .waitFor({ state: "detached" });

    await type(page, "interrupter.onTime", "40");
    await expect.poll(() => figure(page, "Peak primary current")).toBeLessThan(0.8 * current);
    await findings(page)
      .getByText(/first beat minimum/)
      .waitFor({ state: "detached" });
    await type(page, "interrupter.onTime", "0");
    await expect.poll(() => figure(page, "Peak primary current")).toBe(0);
    await type(page, "interrupter.onTime", "120");
    await type(page, "drive.switch.pulseCurrentRating", "420");
    await findings(page)
      .getByText(/is above the pulse rating of 420/)
      .waitFor();
    expect(await page.locator("body").textContent()).not.toMatch(/NaN|Infinity|undefined/);
    expect(faults).toEqual([]);
  });

  it("sweeps the tap for most energy, may be cancelled, and takes the tap as one step", async () => {
    const { page, faults } = await begin();
    await page.getByLabel("Tuning against").selectOption("tap, energy into the spark");
    await page.getByRole("button", { name: "Cancel" }).click();
    await page.getByRole("button", { name: "Compute again" }).click();
    await page.getByRole("button", { name: "Use this tap" }).click({ timeout: 20_000 });
    const tap = page.getByRole("region", { name: "Tap" }).locator('[data-field="primary.tap"]');
    await expect.poll(() => tap.inputValue()).toMatch(/^6\.10/);
    await page.keyboard.press("Control+z");
    await expect.poll(() => tap.inputValue()).toBe("6.14");
    expect(faults).toEqual([]);
  });

  it("exports a burst as a netlist", async () => {
    const { page } = await begin();
    await page.getByRole("button", { name: "Designs" }).click();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("menuitem", { name: "Export netlist, one burst" }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/burst\.cir$/);
  });

  it.each([
    [1440, 900],
    [390, 844],
  ])("shows the burst at %i × %i to everyone, and not over the page's edge", async (width, height) => {
    const { page } = await begin({ width, height });
    await page.getByRole("tab", { name: "Burst" }).click();
    await page.getByRole("img", { name: /^Top voltage/ }).waitFor();
    expect(await violations(page)).toEqual([]);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
  });
});
