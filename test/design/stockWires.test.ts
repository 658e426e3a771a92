import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { STOCK_WIRES } from "../../src/design/stockWires";

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
  it.each(STOCK_WIRES)("$conductorDiameter m has the standard's enamel", (wire) => {
    const row = rows.find(([nominal]) => Math.abs(Number(nominal) * 1e-3 - wire.conductorDiameter) < 1e-9);
    expect(wire.grade1 * 1e3).toBeCloseTo(row?.[1][1] ?? Number.NaN, 9);
    expect(wire.grade2 * 1e3).toBeCloseTo(row?.[1][3] ?? Number.NaN, 9);
  });

  it("rise, each thicker over more enamel", () => {
    for (const [index, wire] of STOCK_WIRES.entries()) {
      expect(wire.conductorDiameter).toBeGreaterThan(STOCK_WIRES[index - 1]?.conductorDiameter ?? 0);
      expect(wire.grade2).toBeGreaterThan(wire.grade1);
      expect(wire.grade1).toBeGreaterThan(wire.conductorDiameter);
    }
  });
});
