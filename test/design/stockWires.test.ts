import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { STOCK_WIRES, stockWireOf } from "../../src/design/stockWires";

interface PublishedEntry {
  id: string;
  value: Record<string, (number | null)[]>;
}

/** IEC 60317-0-1 as kept in the reference data: nominal mm → [·, grade 1 maximum, ·, grade 2 maximum, ·] */
const published: PublishedEntry[] = JSON.parse(
  readFileSync(new URL("../reference/published.json", import.meta.url), "utf8"),
);
const rows = Object.entries(published.find((entry) => entry.id === "W-iec60317")?.value ?? {});

describe("the stock wires", () => {
  it.each(STOCK_WIRES)("$name has the standard's enamel", ({ name, conductorDiameter, overallDiameter }) => {
    const row = rows.find(([nominal]) => Math.abs(Number(nominal) * 1e-3 - conductorDiameter) < 1e-9);
    const column = name.endsWith("grade 1") ? 1 : 3;
    expect(overallDiameter * 1e3).toBeCloseTo(row?.[1][column] ?? Number.NaN, 9);
    expect(name).toBe(`${Number((conductorDiameter * 1e3).toFixed(6))} mm, grade ${column === 1 ? 1 : 2}`);
  });

  it("have a name of their own each", () => {
    expect(new Set(STOCK_WIRES.map(({ name }) => name)).size).toBe(STOCK_WIRES.length);
  });

  it("are known by both diameters", () => {
    for (const wire of STOCK_WIRES) expect(stockWireOf(wire)).toBe(wire);
    const [{ conductorDiameter, overallDiameter }] = STOCK_WIRES;
    expect(stockWireOf({ conductorDiameter, overallDiameter: overallDiameter + 1e-6 })).toBeNull();
  });
});
