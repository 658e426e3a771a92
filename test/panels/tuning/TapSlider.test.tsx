import { act, fireEvent, render, screen } from "@testing-library/react";
import { expect, it } from "vitest";
import { TapSlider } from "../../../src/panels/tuning/TapSlider";
import { session, workbench } from "../../../src/workbench/session/session";

it("the slider moves the tap as one step and gives it back at Escape", () => {
  const design = () => {
    const { designs, open } = session.store.getState().history.present;
    return designs[open];
  };
  workbench.resetToExamples();
  render(<TapSlider />);
  const slider = screen.getByRole("slider", { name: "Tap along the primary" });
  const before = design().primary.tap;
  const steps = session.store.getState().history.past.length;
  fireEvent.change(slider, { target: { value: "5" } });
  fireEvent.change(slider, { target: { value: "5.5" } });
  fireEvent.pointerUp(slider);
  expect(design().primary.tap).toBe(5.5);
  expect(session.store.getState().history.past).toHaveLength(steps + 1);
  fireEvent.change(slider, { target: { value: "4" } });
  fireEvent.keyDown(slider, { key: "Escape" });
  expect(design().primary.tap).toBe(5.5);
  act(() => workbench.undo());
  expect(design().primary.tap).toBe(before);
});
