import { describe, expect, it } from "vitest";
import { crossings } from "../../../src/calc/coil/crossings";
import type { TopLoadElement } from "../../../src/calc/design-parts";
import { type CoilParts, conductorsOf, EXAMPLE } from "./solvedCoil";

function pairsOf(parts: CoilParts): string[] {
  return crossings(conductorsOf(parts)).map(({ path, other }) => `${path} × ${other}`);
}

function withPrimary(changes: Partial<CoilParts["primary"]>): CoilParts {
  return { ...EXAMPLE, primary: { ...EXAMPLE.primary, ...changes } };
}

function withElements(...elements: TopLoadElement[]): CoilParts {
  return { ...EXAMPLE, elements };
}

const TOROID = { shape: "toroid", outerDiameter: 0.46, tubeDiameter: 0.11, centreHeight: 0.745 } as const;

describe("crossings", () => {
  it("finds none in the example", () => {
    expect(pairsOf(EXAMPLE)).toEqual([]);
  });

  it.each<[string, CoilParts, string[]]>([
    [
      "a toroid that cuts the winding",
      withElements({ ...TOROID, outerDiameter: 0.24, tubeDiameter: 0.06, centreHeight: 0.6 }),
      ["topLoad.elements.0 × secondary"],
    ],
    [
      "toroids that touch",
      withElements(TOROID, { ...TOROID, centreHeight: 0.855 }),
      ["topLoad.elements.1 × topLoad.elements.0"],
    ],
    [
      "a toroid without a hole",
      withElements({ ...TOROID, outerDiameter: 0.2, tubeDiameter: 0.11, centreHeight: 0.8 }),
      ["topLoad.elements.0 × axis"],
    ],
    [
      "a toroid in the ground",
      withElements({ ...TOROID, centreHeight: 0.05, outerDiameter: 0.9 }),
      ["topLoad.elements.0 × ground"],
    ],
    ["turns that touch", withPrimary({ pitch: 0.0095 }), ["primary × primary"]],
    [
      "a primary inside the winding's wire",
      withPrimary({ innerRadius: 0.06, baseHeight: 0.12 }),
      ["primary × secondary"],
    ],
    [
      "a rail in the primary's end",
      withPrimary({ strikeRail: { radius: 0.228, tubeDiameter: 0.0095, height: 0.1 } }),
      ["primary.strikeRail × primary"],
    ],
    [
      "a winding in the ground",
      { ...EXAMPLE, secondary: { ...EXAMPLE.secondary, baseHeight: 0 } },
      ["secondary.baseHeight × ground"],
    ],
  ])("names both parts of %s", (_, parts, pairs) => {
    expect(pairsOf(parts)).toEqual(pairs);
  });

  it("names a conducting wall or ceiling that is in the way, and only a conducting one", () => {
    const room = { ...EXAMPLE.room, wallDistance: 0.2, ceilingHeight: 0.7 };
    expect(pairsOf({ ...EXAMPLE, room })).toEqual([]);
    const conducting = { ...room, wallConducts: true, ceilingConducts: true };
    expect(pairsOf({ ...EXAMPLE, room: conducting })).toEqual(
      expect.arrayContaining([
        "room.wallDistance × topLoad.elements.0",
        "room.ceilingHeight × topLoad.elements.0",
      ]),
    );
  });

  it("lets a begun last turn stand where the spiral does not touch itself", () => {
    for (const turns of [8.01, 8.2, 8.5, 8.9]) {
      expect(pairsOf(withPrimary({ turns, pitch: 0.0097, strikeRail: null }))).toEqual([]);
    }
  });

  it("tells how far parts overlap, the worst of many turns once", () => {
    const [crossing, ...others] = crossings(conductorsOf(withPrimary({ pitch: 0.009, strikeRail: null })));
    expect(others).toEqual([]);
    expect(crossing.gap).toBeCloseTo(-0.0005, 9);
  });
});
