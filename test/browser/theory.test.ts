import axe from "axe-core";
import { describe, expect, it } from "vitest";
import { openPage } from "./support/page";

describe("the theory page in a real browser", () => {
  it("opens from the header, shows a known row, has no fault that axe finds, and leads back", async () => {
    const { page, faults } = await openPage();
    await page.getByRole("dialog").getByRole("button").last().click();
    await page.getByRole("button", { name: "Theory" }).click();
    expect(new URL(page.url()).hash).toBe("#theory");
    await page.getByText("Published values", { exact: true }).click();
    const row = page.getByRole("row", { name: "Isolated sphere of 0.1 m radius" });
    await row.waitFor();
    expect(await row.textContent()).toMatch(/1\.11265\s×\s10⁻¹¹/);

    const works = page.getByRole("region", { name: "Works cited" });
    await works.getByText("F. W. Grover, Inductance Calculations, 1946").waitFor();

    await page.evaluate(axe.source);
    const violations = await page.evaluate(async () => {
      const { axe: checker } = window as unknown as { axe: typeof axe };
      return (await checker.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.target}`);
    });
    expect(violations).toEqual([]);

    await page.goBack();
    await page.getByRole("button", { name: "Theory" }).waitFor();
    expect(faults).toEqual([]);
  }, 60_000);
});
