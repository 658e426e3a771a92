import { describe, expect, it } from "vitest";
import { openPage, pageCount } from "./support/page";

describe("the production build in a real browser", () => {
  it("starts without an error and fetches nothing from outside", async () => {
    const { page, faults } = await openPage();
    await page.waitForSelector("#root > *");
    await page.waitForLoadState("networkidle");
    expect(faults).toEqual([]);
  });

  it("prints text, not empty boxes, into a PDF", async () => {
    const { page } = await openPage();
    await page.goto("about:blank");
    await page.setContent("<p>Tap at 6.2 turns</p>");
    const pdf = await page.pdf({ format: "A4" });
    expect(pageCount(pdf)).toBe(1);
    expect(pdf.toString("latin1")).toContain("/FontFile");
  });
});
