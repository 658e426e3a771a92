import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { begin } from "./support/begin";
import { openPage } from "./support/page";

/** Renames the open design and waits until that is kept. */
async function rename(page: Page, title: string) {
  const field = page.getByLabel("Title of the design");
  await field.fill(title);
  await field.press("Enter");
  await expect
    .poll(() => page.evaluate(() => localStorage.getItem("coilwright/show") ?? ""))
    .toContain(title);
}

describe("the safe start in a real browser", () => {
  it("stands in where the program does not load: lists, exports, and opens an earlier version", async () => {
    const { page } = await begin();
    await rename(page, "Before the storm");
    await page.evaluate(() => {
      const text = localStorage.getItem("coilwright/show") ?? "";
      localStorage.setItem("coilwright/kept/2026-01-02T03:04:05.000Z", text);
    });
    await rename(page, "After the storm");
    await page.route(/\/assets\/main-.*\.js/, (route) => route.abort());
    await page.reload();
    await page.getByRole("heading", { name: "Coilwright, safe page" }).waitFor();
    expect(await page.getByRole("alert").innerText()).toContain("The program did not start");
    const list = page.getByRole("list").last();
    expect(await list.innerText()).toMatch(/After the storm[\s\S]*Before the storm/);

    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Export everything" }).click(),
    ]);
    const path = join(mkdtempSync(join(tmpdir(), "coilwright-")), "kept.json");
    await download.saveAs(path);
    const exported = JSON.parse(readFileSync(path, "utf8"));
    expect(exported.localStorage["coilwright/show"]).toContain("After the storm");

    await page.unroute(/\/assets\/main-.*\.js/);
    await page
      .getByRole("listitem")
      .filter({ hasText: "Before the storm" })
      .getByRole("button", { name: /^Open / })
      .click();
    await expect.poll(() => page.getByLabel("Title of the design").inputValue()).toBe("Before the storm");
    await page.goto(`${page.url().replace(/#.*/, "")}#safe`);
    await page.getByRole("listitem").filter({ hasText: "After the storm" }).first().waitFor();
    await page.goBack();
    await page.getByRole("slider", { name: "Tap on the primary" }).waitFor();
  });

  it("stands in where the program fails as a whole while it is shown", async () => {
    const { page } = await openPage({ path: "mark.svg" });
    await page.addInitScript(() => {
      const known = window.matchMedia.bind(window);
      window.matchMedia = (query) => {
        if (query.includes("min-width")) throw new Error("no such width");
        return known(query);
      };
    });
    await page.goto(new URL("./", page.url()).href);
    await page.getByRole("heading", { name: "Coilwright, safe page" }).waitFor();
    expect(await page.getByRole("alert").innerText()).toContain("The program failed while it was running");
    expect(await page.locator("body").innerText()).not.toContain("no such width");
  });

  it("opens at its own address without the program, and leads back to it", async () => {
    const { page, faults } = await begin();
    await page.goto(`${page.url()}#safe`);
    await page.getByRole("heading", { name: "Coilwright, safe page" }).waitFor();
    await page.getByRole("button", { name: "Start program" }).click();
    await page.getByRole("slider", { name: "Tap on the primary" }).waitFor();
    expect(faults).toEqual([]);
  });

  it("keeps a part that did not come to its own place, and really fetches it again", async () => {
    const { page } = await begin();
    const score = /\/assets\/Score-.*\.js(?!\?)/;
    await page.route(score, (route) => route.abort());
    await page.getByRole("tab", { name: "Score" }).click();
    await page.getByText("The score could not be loaded.").waitFor();
    expect(await page.getByRole("slider", { name: "Tap on the primary" }).count()).toBe(1);
    await page.unroute(score);
    await page.getByRole("button", { name: "Retry" }).click();
    await page.getByText("Open a Standard MIDI File, or drop it here").waitFor();
  });
});
