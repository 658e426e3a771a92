import { act, fireEvent, render, screen } from "@testing-library/react";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { CrossSection } from "../../src/drawing/CrossSection";
import { session, workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "../app/browserParts";

beforeAll(addBrowserParts);
beforeEach(() => {
  workbench.resetToExamples();
  render(<CrossSection />);
});

const design = () => {
  const { history } = session.store.getState();
  return history.present.designs[history.present.open];
};

describe("the drawing", () => {
  it("moves the tap by the arrow keys, a hundredth of a turn a press", () => {
    const tap = screen.getByRole("slider", { name: "Tap on the primary" });
    const before = design().primary.tap;
    fireEvent.keyDown(tap, { key: "ArrowRight" });
    expect(design().primary.tap).toBeCloseTo(before + 0.01, 9);
    fireEvent.keyDown(tap, { key: "ArrowLeft", shiftKey: true });
    expect(design().primary.tap).toBeCloseTo(before - 0.09, 9);
    // presses that follow one another are one step
    act(() => workbench.undo());
    expect(design().primary.tap).toBeCloseTo(before, 9);
  });

  it("never moves the tap off the conductor", () => {
    const tap = screen.getByRole("slider", { name: "Tap on the primary" });
    for (let press = 0; press < 40; press++) fireEvent.keyDown(tap, { key: "ArrowRight", shiftKey: true });
    expect(design().primary.tap).toBe(design().primary.turns);
  });

  it("widens and raises the toroid", () => {
    fireEvent.keyDown(screen.getByRole("slider", { name: "Diameter of toroid 1" }), { key: "ArrowUp" });
    fireEvent.keyDown(screen.getByRole("slider", { name: "Height of toroid 1" }), { key: "ArrowUp" });
    expect(design().topLoad.elements[0]).toMatchObject({ outerDiameter: 0.465, centreHeight: 0.75 });
  });

  it("says in words what is tuned", () => {
    const text = () =>
      screen.getByRole("slider", { name: "Tap on the primary" }).getAttribute("aria-valuetext");
    expect(text()).toMatch(/tuned$/);
    act(() => workbench.setValue("primary.tap", 4));
    expect(text()).not.toMatch(/tuned$/);
  });

  it("draws the dimensions in the reader's units", () => {
    expect(screen.getByText(/560\.0/)).toBeInTheDocument();
    expect(screen.getByText(/745\.0/)).toBeInTheDocument();
  });

  it("thickens the toroid's tube, and never to a toroid without a hole", () => {
    const tube = screen.getByRole("slider", { name: "Tube of toroid 1" });
    fireEvent.keyDown(tube, { key: "ArrowUp" });
    expect(design().topLoad.elements[0]).toMatchObject({ tubeDiameter: 0.112, outerDiameter: 0.46 });
    fireEvent.keyDown(tube, { key: "End" });
    const { tubeDiameter } = design().topLoad.elements[0] as { tubeDiameter: number };
    expect(tubeDiameter).toBeLessThan(0.23);
    expect(tubeDiameter).toBeGreaterThan(0.22);
  });

  it("takes the tap to either end, and by pages", () => {
    const tap = screen.getByRole("slider", { name: "Tap on the primary" });
    fireEvent.keyDown(tap, { key: "End" });
    expect(design().primary.tap).toBe(design().primary.turns);
    fireEvent.keyDown(tap, { key: "PageDown" });
    expect(design().primary.tap).toBeCloseTo(design().primary.turns - 0.1, 9);
    fireEvent.keyDown(tap, { key: "Home" });
    expect(design().primary.tap).toBeCloseTo(0.1, 9);
  });

  it("shows ceiling and wall only where they are in view", () => {
    const hatched = () => document.querySelectorAll("path[class*=hatch]").length;
    expect(hatched()).toBe(1);
    act(() => workbench.setValue("room.ceilingHeight", 0.85));
    expect(hatched()).toBe(2);
    act(() => workbench.setValue("room.wallDistance", 0.3));
    expect(hatched()).toBe(3);
    act(() => workbench.setValue("room.ceilingHeight", null));
    act(() => workbench.setValue("room.wallDistance", null));
    expect(hatched()).toBe(1);
  });
});
