import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openPage, pageCount } from "./support/page";

const ASSETS = join(import.meta.dirname, "..", "..", "dist", "assets");

describe("the production build in a real browser", () => {
  it("holds no development version of React in any chunk, because what is tested is what is served", () => {
    const chunks = readdirSync(ASSETS).filter((name) => name.endsWith(".js"));
    expect(chunks.length).toBeGreaterThan(10);
    const development = chunks.filter((name) =>
      /jsxDEV|react-dom[\w-]*\.development/.test(readFileSync(join(ASSETS, name), "utf8")),
    );
    expect(development).toEqual([]);
  });

  it("fetches the program in one file beside the entry, which needs nothing of it for its safe page", () => {
    const page = readFileSync(join(ASSETS, "..", "index.html"), "utf8");
    const [, program] =
      page.match(/rel="modulepreload" crossorigin href="\.\/assets\/(program-[\w-]+\.js)"/) ?? [];
    const [, entry] =
      page.match(/<script type="module" crossorigin src="\.\/assets\/(index-[\w-]+\.js)"/) ?? [];
    expect(readdirSync(ASSETS)).toContain(program);
    const text = readFileSync(join(ASSETS, String(entry)), "utf8");
    const needed = [...text.matchAll(/\bfrom\s*"\.\/([\w-]+\.js)"/g)].map(([, name]) => name);
    expect(needed.length).toBeGreaterThan(0);
    expect(needed).not.toContain(program);
    for (const name of needed) expect(readFileSync(join(ASSETS, name), "utf8")).not.toContain(program);
  });

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
