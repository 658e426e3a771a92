import { describe, expect, it } from "vitest";
import type { TopLoad } from "../../../src/calc/design-parts";
import { moved, newSphere, newToroid } from "../../../src/panels/topLoad/elements";

const bare: TopLoad = { elements: [], breakoutPoint: null, surfaceFactor: 1 };

describe("an element that is added to a top load", () => {
  it("stands clear of the winding on a bare coil", () => {
    const toroid = newToroid(bare, 0.67);
    expect(toroid.centreHeight - toroid.tubeDiameter / 2).toBeGreaterThan(0.67);
  });

  it("stands clear of the highest element, not of the last one", () => {
    const low = newToroid(bare, 0.67);
    const high = newToroid({ ...bare, elements: [low] }, 0.67);
    const sphere = newSphere({ ...bare, elements: [high, low] }, 0.67);
    expect(sphere.centreHeight - sphere.diameter / 2).toBeGreaterThan(
      high.centreHeight + high.tubeDiameter / 2,
    );
  });

  it("keeps the others when it is moved in the list", () => {
    const [first, second] = [newToroid(bare, 0.67), newSphere(bare, 0.67)];
    expect(moved([first, second], 1, 0)).toEqual([second, first]);
    expect(moved([first, second], 0, 1)).toEqual([second, first]);
  });
});
