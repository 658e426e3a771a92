import { describe, expect, it } from "vitest";
import { coilConductors } from "../../../src/calc/coil/conductors";
import { solveElectricField } from "../../../src/calc/coil/electricField";
import { coilMesh } from "../../../src/calc/coil/mesh";
import { nodeCount } from "../../../src/calc/field/electrode";
import { pierHallLeft } from "../../../src/design/examples";

const { secondary, topLoad, primary, room } = pierHallLeft;

/** Nodes of everything but the winding. */
function nodesOf({ topLoad: tops, grounded }: ReturnType<typeof coilMesh>): number {
  return [...tops, ...grounded].reduce((sum, electrode) => sum + nodeCount(electrode), 0);
}

describe("a coil's mesh", () => {
  it("has as many nodes as its gaps ask for where that is within bounds", () => {
    const own = coilConductors(secondary, topLoad.elements, primary, room);
    expect(nodesOf(coilMesh(own))).toBe(128);
    expect(nodesOf(coilMesh(own, 2))).toBe(256);
  });

  it("does with fewer where forty turns and eight elements ask for too many, and the capacitance stays", () => {
    const elements = Array.from({ length: 8 }, (_, index) => ({
      ...topLoad.elements[0],
      shape: "toroid" as const,
      outerDiameter: 0.46,
      tubeDiameter: 0.05,
      centreHeight: 0.7 + 0.0505 * index,
    }));
    const wide = { ...primary, turns: 40, strikeRail: null };
    const crowded = coilConductors(secondary, elements, wide, room);
    const mesh = coilMesh(crowded);
    expect(nodesOf(mesh)).toBeLessThan(420);
    const last = (field: ReturnType<typeof solveElectricField>) =>
      field?.loaded?.elastance.matrix.at(-1) ?? 0;
    const [bounded, fine] = [mesh, coilMesh(crowded, 2)].map((each) =>
      last(solveElectricField(each, { ceilingHeight: null })),
    );
    expect(Math.abs(bounded / fine - 1)).toBeLessThan(2e-3);
  });
});
