import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { wireGaugeDiameter } from "../../src/units/wireGauge";

interface PublishedEntry {
  id: string;
  value: Record<string, number[]>;
}

/** ASTM B258 as kept in the reference data: gauge → [diameter in mm, …], five decimals */
const published: PublishedEntry[] = JSON.parse(
  readFileSync(new URL("../reference/published.json", import.meta.url), "utf8"),
);
const gauges = Object.entries(published.find((entry) => entry.id === "W-awg")?.value ?? {});

describe("the wire gauge", () => {
  it("has a published table to be checked against", () => {
    expect(gauges.length).toBeGreaterThan(10);
  });

  it.each(gauges)("No. %s has the diameter of the table", (number, [millimetres]) => {
    expect(wireGaugeDiameter(Number(number)) * 1e3).toBeCloseTo(millimetres, 4);
  });

  // ASTM B258 by definition: 0.4600 in and 0.0050 in
  it("meets the two diameters that define it", () => {
    expect(wireGaugeDiameter(-3)).toBeCloseTo(0.46 * 0.0254, 12);
    expect(wireGaugeDiameter(36)).toBeCloseTo(0.005 * 0.0254, 12);
  });
});
