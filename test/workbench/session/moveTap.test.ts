import { beforeEach, describe, expect, it } from "vitest";
import { applyTap, dragTap, lowestTap, moveTap } from "../../../src/workbench/session/moveTap";
import { session, workbench } from "../../../src/workbench/session/session";

beforeEach(() => workbench.resetToExamples());

function design() {
  const { present } = session.store.getState().history;
  return present.designs[present.open];
}

describe("the tap, moved by hand", () => {
  it("stays on the primary, at a tenth of a turn at least, and on thousandths of a turn", () => {
    const { turns } = design().primary;
    workbench.begin("move tap");
    moveTap(-3);
    expect(design().primary.tap).toBe(0.1);
    moveTap(turns + 5);
    expect(design().primary.tap).toBe(turns);
    moveTap(5.123456789);
    expect(design().primary.tap).toBe(5.123);
    workbench.commit();
  });

  it("is one step for a drag, and none where the drag is given up", () => {
    const before = design().primary.tap;
    dragTap(before, "begin");
    dragTap(5, "move");
    dragTap(4, "move");
    dragTap(4, "end");
    expect(design().primary.tap).toBe(4);
    workbench.undo();
    expect(design().primary.tap).toBe(before);
    dragTap(before, "begin");
    dragTap(5, "move");
    dragTap(5, "cancel");
    expect(design().primary.tap).toBe(before);
  });

  it("takes what it was proposed for with it", () => {
    applyTap(5.5, "take it", { kind: "most energy" });
    expect(design()).toMatchObject({ tuningAim: { kind: "most energy" }, primary: { tap: 5.5 } });
    applyTap(5.4, "take it");
    expect(design()).toMatchObject({ tuningAim: { kind: "most energy" }, primary: { tap: 5.4 } });
  });

  it("goes no further than a primary of less than a tenth of a turn", () => {
    expect([0.05, 1].map(lowestTap)).toEqual([0.05, 0.1]);
    workbench.setValue("primary.turns", 0.05);
    workbench.begin("move tap");
    moveTap(1);
    workbench.commit();
    expect(design().primary.tap).toBe(0.05);
  });
});
