// @vitest-environment node
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const css = readFileSync(new URL("../../src/ui/tokens.css", import.meta.url), "utf8");

function block(theme: string): Map<string, string> {
  const body = css.match(new RegExp(`\\[data-theme="${theme}"\\] \\{([^}]*)\\}`))?.[1] ?? "";
  return new Map([...body.matchAll(/(--[a-z-]+): (#[0-9a-f]{6});/g)].map((found) => [found[1], found[2]]));
}

/** Relative luminance, WCAG 2.2 definition (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance). */
function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((start) => {
    const channel = Number.parseInt(hex.slice(start, start + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio, WCAG 2.2 (https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio). */
function contrast(first: string, second: string): number {
  const [darker, lighter] = [luminance(first), luminance(second)].sort((a, b) => a - b);
  return (lighter + 0.05) / (darker + 0.05);
}

const grounds = ["--paper", "--paper-raised", "--paper-sunk"];
const texts = [
  "--ink",
  "--ink-soft",
  "--ink-faint",
  "--error",
  "--warning",
  "--note",
  "--ok",
  "--live",
  "--copper",
];
const lines = ["--rule", "--rule-strong", "--winding", "--ground", "--field", "--focus"];
const pairs = (fronts: string[]) => fronts.flatMap((front) => grounds.map((ground) => [front, ground]));

describe("the contrast figure itself", () => {
  it("gives 21 for black on white and 4.54 for #767676 on white (WCAG technique G18 examples)", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
    expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
  });
});

describe.each(["light", "dark"])("the colours of the %s theme", (theme) => {
  const colours = block(theme);
  const ratio = (front: string, ground: string) =>
    contrast(colours.get(front) ?? "", colours.get(ground) ?? "");

  it.each(pairs(texts))("let %s be read as text on %s", (front, ground) => {
    expect(ratio(front, ground)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(pairs(lines))("let %s be seen as a line on %s", (front, ground) => {
    expect(ratio(front, ground)).toBeGreaterThanOrEqual(3);
  });

  it.each(["--live-soft", "--copper-soft", "--winding-soft"])("let ink be read on %s", (ground) => {
    expect(ratio("--ink", ground)).toBeGreaterThanOrEqual(4.5);
  });

  it("let the paper be read on a filled button of ink", () => {
    expect(ratio("--paper", "--ink")).toBeGreaterThanOrEqual(4.5);
  });
});

it("names the same colours in both themes", () => {
  expect([...block("dark").keys()].sort()).toEqual([...block("light").keys()].sort());
});
