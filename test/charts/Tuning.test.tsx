import { act, fireEvent, render, screen } from "@testing-library/react";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { Tuning } from "../../src/charts/Tuning";
import { workbench } from "../../src/workbench/session";
import { addBrowserParts } from "../app/browserParts";

beforeAll(addBrowserParts);
beforeEach(() => {
  workbench.resetToExamples();
});

function against(value: string): void {
  fireEvent.change(screen.getByLabelText("Tuning against"), { target: { value } });
}

describe("the tuning's choice of abscissa", () => {
  it("begins with the tap", () => {
    render(<Tuning />);
    expect(screen.getByRole("img", { name: /^Tuning: resonance against tap/ })).toBeInTheDocument();
  });

  it.each([
    ["bank capacitance", "bank capacitance"],
    ["toroid's outer diameter", "outer diameter of the widest toroid"],
    ["spark length", "spark length"],
  ])("draws resonances, poles and coupling against %s, with the present value marked", (value, label) => {
    render(<Tuning />);
    against(value);
    expect(screen.getByRole("img", { name: `Tuning: resonance against ${label}` })).toBeInTheDocument();
    expect(
      screen.getByRole("img", { name: `Coupling: coupling of the circuit against ${label}` }),
    ).toBeInTheDocument();
    expect(screen.getAllByText("Present value")).toHaveLength(2);
    expect(document.body.textContent).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("says so where there is no toroid, and where the coil has no solution", () => {
    act(() => workbench.setValue("secondary.windingLength", 0.1));
    render(<Tuning />);
    against("spark length");
    expect(screen.getByText(/cannot be drawn/)).toBeInTheDocument();
    act(() => workbench.setValue("topLoad.elements", []));
    against("toroid's outer diameter");
    expect(screen.getByText(/no toroid/)).toBeInTheDocument();
  });
});
