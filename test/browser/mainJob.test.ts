import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { begin } from "./support/begin";
import { openPage, pageCount } from "./support/page";
import { violations } from "./support/violations";

function tapField(page: Page) {
  return page.getByRole("region", { name: "Tap" }).locator('[data-field="primary.tap"]');
}

async function typeTap(page: Page, text: string) {
  await tapField(page).fill(text);
  await tapField(page).press("Enter");
}

/** Drags the tap's flag on the drawing by pixels, a few at a time, until the bar says that it is tuned. */
async function dragUntilTuned(page: Page, step: number) {
  const handle = page.getByRole("slider", { name: "Tap on the primary" });
  const box = await handle.locator("circle").last().boundingBox();
  if (!box) throw new Error("the tap is not on the drawing");
  let x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  await page.mouse.move(x, y);
  await page.mouse.down();
  const bar = page.getByRole("region", { name: "Tap" });
  const isTuned = async () => (await bar.getByText("Tuned", { exact: true }).count()) > 0;
  for (let moves = 0; moves < 600; moves++) {
    x += step;
    await page.mouse.move(x, y);
    if (!(await isTuned())) continue;
    // on a busy machine the bar is behind the hand, which may have gone too far
    await page.waitForTimeout(300);
    if (await isTuned()) break;
    step *= -0.5;
  }
  await page.mouse.up();
  await bar.getByText("Tuned", { exact: true }).waitFor({ timeout: 5000 });
}

/** Waits until a sentence is seen, wherever it stands; a closed panel may hold it too. */
async function shown(page: Page, sentence: string) {
  await page.getByText(sentence).locator("visible=true").first().waitFor();
}

describe("the main job", () => {
  it("drags the tap until it is reported tuned, as one step of undo", async () => {
    const { page, faults } = await begin();
    await typeTap(page, "5.9");
    await page.getByText("Not tuned").waitFor();
    await dragUntilTuned(page, 0.5);
    const tuned = await tapField(page).inputValue();
    expect(Number(tuned)).toBeGreaterThan(6.05);
    expect(Number(tuned)).toBeLessThan(6.25);
    await page.keyboard.press("Control+z");
    await expect.poll(() => tapField(page).inputValue()).toBe("5.9");
    expect(faults).toEqual([]);
  });

  it("lines up two toroids, adopts one, and keeps everything over a reload", async () => {
    const { page, faults } = await begin();
    await page.getByRole("tab", { name: "Line-up" }).click();
    for (const size of ["400 × 100 mm toroid", "550 × 130 mm toroid"]) {
      await page.getByLabel("Stock size").selectOption(size);
    }
    const capacitances = page.getByRole("row", { name: /Capacitance, isolated/ }).getByRole("cell");
    await expect
      .poll(async () => (await capacitances.allTextContents()).join(" "))
      .toMatch(/17\.20\spF.*23\.44\spF/);
    await page.getByRole("button", { name: "Use 550 × 130 mm" }).click();
    const width = page.getByRole("slider", { name: "Diameter of toroid 1" });
    await expect.poll(() => width.getAttribute("aria-valuetext")).toMatch(/^550\.0/);
    await page.getByText("Saved").waitFor();
    await page.waitForTimeout(800);
    await page.reload();
    await width.waitFor();
    expect(await width.getAttribute("aria-valuetext")).toMatch(/^550\.0/);
    expect(await page.getByRole("dialog").count()).toBe(0);
    await page.getByRole("tab", { name: "Line-up" }).click();
    await page.getByRole("button", { name: "Use 400 × 100 mm" }).waitFor();
    expect(faults).toEqual([]);
  });

  it("exports a design, changes it, and opens the export again as it was", async () => {
    const { page } = await begin();
    await page.getByRole("button", { name: "Designs" }).click();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("menuitem", { name: /Export.*design/i }).click(),
    ]);
    const path = join(mkdtempSync(join(tmpdir(), "coilwright-")), "design.json");
    await download.saveAs(path);
    const before = await tapField(page).inputValue();
    await typeTap(page, "4");
    await page.getByRole("button", { name: "Designs" }).click();
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      page
        .getByRole("menuitem", { name: /Open|Import/i })
        .first()
        .click(),
    ]);
    await chooser.setFiles(path);
    await expect.poll(() => tapField(page).inputValue()).toBe(before);
  });

  it.each(["A4", "Letter"])(
    "prints the build sheet on exactly one page of %s, light from the dark theme",
    async (format) => {
      const { page } = await openPage({ width: 1440, height: 900, colorScheme: "dark" });
      await page.getByRole("dialog").waitFor();
      for (const box of await page.getByRole("dialog").getByRole("checkbox").all()) await box.check();
      await page.getByRole("dialog").getByRole("button").last().click();
      await page.getByRole("button", { name: "Build sheet" }).click();
      const sheet = page.getByRole("article", { name: "Build sheet" });
      await sheet.getByText("140.2").first().waitFor();
      expect(await sheet.evaluate((element) => getComputedStyle(element).backgroundColor)).toBe(
        "rgb(255, 255, 255)",
      );
      expect(pageCount(await page.pdf({ format, printBackground: true }))).toBe(1);
    },
  );

  it.each([
    [1440, 900],
    [390, 844],
  ])("has no accessibility violation at %i × %i, on any view", async (width, height) => {
    const { page } = await begin({ width, height });
    await page.getByText("140.2").first().waitFor();
    expect(await violations(page)).toEqual([]);
    await page.getByRole("tab", { name: "Line-up" }).click();
    await page.getByLabel("Stock size").selectOption("400 × 100 mm toroid");
    await page.getByRole("button", { name: /^Use 400/ }).waitFor();
    expect(await violations(page)).toEqual([]);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
  });

  it("keeps what is wrong in the field, says so, and shows no figure that is none", async () => {
    const { page } = await begin();
    const turns = page.locator('[data-field="secondary.turns"]').first();
    for (const [typed, said] of [
      ["NaN", "cannot be read"],
      ["-5", "above zero"],
      ["0", "above zero"],
      ["1e999", "finite"],
    ]) {
      await turns.fill(typed);
      await turns.press("Enter");
      await shown(page, said);
      expect(await turns.inputValue()).toBe(typed);
    }
    await turns.press("Escape");
    await typeTap(page, "30");
    await shown(page, "lies past the end of the primary");
    await page.locator('[data-field="secondary.windingLength"]').first().fill("100");
    await page.locator('[data-field="secondary.windingLength"]').first().press("Enter");
    await shown(page, "shorter than its turns side by side");
    expect(await page.locator("body").textContent()).not.toMatch(/NaN|Infinity|undefined/);
  });
});
