import { act, render, screen } from "@testing-library/react";
import { beforeEach, expect, it } from "vitest";
import { SurroundingsPanel } from "../../../src/panels/surroundings/SurroundingsPanel";
import { workbench } from "../../../src/workbench/session/session";

beforeEach(() => {
  workbench.resetToExamples();
});

it("shows beside each correction what it does to the resonance", () => {
  render(<SurroundingsPanel />);
  expect(screen.getAllByText(/(lowers|raises) f₁ by .*%/)).toHaveLength(3);
});

it("says that the size is not computed while the coil has no solution", () => {
  act(() => workbench.setValue("secondary.windingLength", 0.1));
  render(<SurroundingsPanel />);
  expect(screen.getAllByText("effect not computed yet")).toHaveLength(3);
});
