import type { Page } from "playwright-core";
import { describe, expect, inject, it } from "vitest";
import { begin } from "./support/begin";

/** What the page's policy has refused so far, by directive and what was refused. */
async function refusals(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const refused: string[] = [];
    Object.assign(window, { refused });
    document.addEventListener("securitypolicyviolation", ({ effectiveDirective, blockedURI, sample }) =>
      refused.push(`${effectiveDirective} ${blockedURI} ${sample}`),
    );
  });
  return () => page.evaluate(() => (window as unknown as { refused: string[] }).refused);
}

describe("the policy of the page", () => {
  it("refuses nothing of the page's own in any view, on the sheet, in print and in theory, and all else", async () => {
    const { page, faults } = await begin();
    const refused = await refusals(page);
    for (const view of ["Burst", "Line-up", "Score", "Charts"]) {
      await page.getByRole("tab", { name: view }).click();
      await page.getByRole("tabpanel", { name: view }).waitFor();
      await page.waitForLoadState("networkidle");
    }
    const charts = page.getByRole("tabpanel", { name: "Charts" });
    await charts.getByRole("img").first().hover();
    await page.getByRole("button", { name: "Build sheet" }).click();
    await page
      .getByRole("heading", { name: /pier hall/i })
      .first()
      .waitFor();
    await page.pdf();
    await page.goBack();
    await page.getByRole("button", { name: "Theory" }).click();
    await page.getByRole("heading", { level: 1 }).waitFor();
    expect(await refused()).toEqual([]);
    expect(faults).toEqual([]);

    await page.evaluate(() => {
      const strange = document.createElement("p");
      strange.setAttribute("style", "color: red");
      const script = document.createElement("script");
      script.textContent = "window.strange = true";
      document.body.append(strange, script);
      return fetch("https://example.invalid/").catch(() => null);
    });
    await expect
      .poll(async () => new Set((await refused()).map((each) => each.split(" ")[0])))
      .toEqual(new Set(["connect-src", "script-src-elem", "style-src-attr"]));
  }, 60_000);
});

describe("the built folder", () => {
  it("carries the licences of the packages, fonts and worker parts that it contains", async () => {
    const at = async (path: string) => (await fetch(new URL(path, inject("address")))).text();
    const licences = await at("licences.txt");
    const loader = await at("sw.js");
    const worker = await at(`${loader.match(/workbox-\w+/)?.[0]}.js`);
    const parts = [...worker.matchAll(/workbox:([a-z-]+):/g)].map(([, part]) => `workbox-${part}`);
    expect(parts).toContain("workbox-precaching");
    const packages = [
      "react-dom",
      "recharts",
      "zod",
      "midi-file",
      "ml-matrix",
      "@fontsource/barlow-condensed",
    ];
    const named = (name: string) =>
      new RegExp(`^${name} \\d+\\.\\d.*\nLicence: (MIT|OFL-1.1)\n\n.{3}`, "m").test(licences);
    expect([...packages, ...parts].filter((name) => !named(name))).toEqual([]);
    expect(licences).toContain("SIL OPEN FONT LICENSE");
    expect(loader).toContain("licences.txt");
  });
});

describe("the server of the page", () => {
  it("says the policy, and forbids framing and guessing, with every answer", async () => {
    const address = inject("address");
    for (const path of ["", "sw.js", "mark.svg", "absent.js"]) {
      const { headers } = await fetch(new URL(path, address), { headers: { Origin: "http://localhost:1" } });
      expect(headers.get("Content-Security-Policy")).toMatch(/style-src 'self';.*frame-ancestors 'none'$/);
      expect(headers.get("X-Content-Type-Options")).toBe("nosniff");
      expect(headers.get("Referrer-Policy")).toBe("no-referrer");
      expect(headers.get("Access-Control-Allow-Origin")).toBeNull();
    }
  });

  it("lets what is named by its content be kept for ever, and asks anew for the rest", async () => {
    const address = inject("address");
    const page = await (await fetch(address)).text();
    const chunk = page.match(/assets\/[^"]+\.js/)?.[0] ?? "";
    const cached = async (path: string) => {
      const { status, headers } = await fetch(new URL(path, address));
      return [status, headers.get("Cache-Control")];
    };
    expect(await cached(chunk)).toEqual([200, "public, max-age=31536000, immutable"]);
    expect(await cached("")).toEqual([200, "no-cache"]);
    expect(await cached("sw.js")).toEqual([200, "no-cache"]);
    expect(await cached("assets/absent-12345678.js")).toEqual([404, null]);
  });
});
