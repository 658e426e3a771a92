import axe from "axe-core";
import { describe, expect, it } from "vitest";
import { openPage } from "./support/page";

describe("where a figure comes from", () => {
  it("opens by the keyboard, is free of accessibility faults, and leads to a field", async () => {
    const { page } = await openPage({ width: 1440, height: 900 });
    await page.getByRole("dialog").waitFor();
    for (const box of await page.getByRole("dialog").getByRole("checkbox").all()) await box.check();
    await page.getByRole("dialog").getByRole("button").last().click();
    const numbers = page.getByRole("region", { name: "Key numbers" });
    const figure = numbers.getByRole("button", { name: /^Primary resonance: .*Where it comes from$/ });
    await figure.focus();
    await page.keyboard.press("Enter");
    const popover = page.getByRole("dialog");
    await popover.getByText("Accuracy").waitFor();
    await page.evaluate(axe.source);
    const faults = await page.evaluate(async () => {
      const { axe: checker } = window as unknown as { axe: typeof axe };
      const { violations } = await checker.run();
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(" ")}`);
    });
    expect(faults).toEqual([]);
    await popover.getByRole("button").first().click();
    await popover.waitFor({ state: "hidden" });
    expect(await page.evaluate(() => document.activeElement?.getAttribute("data-field"))).toMatch(
      /^primary\./,
    );
  });
});
