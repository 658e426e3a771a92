import axe from "axe-core";
import type { Page } from "playwright-core";

/** What axe finds against the rules of accessibility on the page as it stands. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe: checker } = window as unknown as { axe: typeof axe };
    const result = await checker.run();
    return result.violations.map((each) => `${each.id}: ${each.nodes.map((node) => node.target).join(" ")}`);
  });
}
