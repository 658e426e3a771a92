import { act, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { Tuning } from "../../src/charts/Tuning";
import { energySweeps, session, workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "../app/browserParts";
import { backToRealTimers } from "../realTimers";

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
  ])(
    "draws resonances, poles and coupling against %s, with the present value marked",
    async (value, label) => {
      render(<Tuning />);
      against(value);
      expect(
        await screen.findByRole("img", { name: `Tuning: resonance against ${label}` }),
      ).toBeInTheDocument();
      expect(
        screen.getByRole("img", { name: `Coupling: coupling of the circuit against ${label}` }),
      ).toBeInTheDocument();
      expect(screen.getAllByText("Present value")).toHaveLength(2);
      expect(document.body.textContent).not.toMatch(/NaN|undefined|Infinity/);
    },
  );

  it("says so where there is no toroid, and where the coil has no solution", async () => {
    act(() => workbench.setValue("secondary.windingLength", 0.1));
    render(<Tuning />);
    against("spark length");
    expect(await screen.findByText(/cannot be computed/)).toBeInTheDocument();
    act(() => workbench.setValue("topLoad.elements", []));
    against("toroid's outer diameter");
    expect(screen.getByText(/no toroid/)).toBeInTheDocument();
  });
});

describe("the tap against the energy into the spark", () => {
  const openDesign = () => {
    const { designs, open } = session.store.getState().history.present;
    return designs[open];
  };
  const sweep = () => act(() => vi.advanceTimersByTime(300));

  beforeEach(() => {
    vi.useFakeTimers();
    render(<Tuning />);
    against("tap, energy into the spark");
  });
  afterEach(backToRealTimers);

  it("shows that it computes, and draws energy and peak current for each on-time", () => {
    expect(screen.getByText("Sweeping bursts …")).toBeInTheDocument();
    sweep();
    expect(screen.getByRole("img", { name: /^Energy into the spark: .* against tap/ })).toBeInTheDocument();
    expect(screen.getByRole("img", { name: /^Peak primary current: .* against tap/ })).toBeInTheDocument();
    expect(screen.getAllByText(/120.µs, the design's on-time/)).not.toHaveLength(0);
    expect(screen.getByText(/Over-current limit 480.A/)).toBeInTheDocument();
    expect(screen.getByText(/Rating of switches and bank 600.A/)).toBeInTheDocument();
    expect(document.body.textContent).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("takes the best tap as one step", () => {
    sweep();
    const before = openDesign().primary.tap;
    fireEvent.click(screen.getByRole("button", { name: "Use this tap" }));
    expect(openDesign().primary.tap).toBeCloseTo(energySweeps.store.getState().sweep?.mostEnergyTap ?? 0, 3);
    expect(screen.getByRole("button", { name: "Use this tap" })).toBeDisabled();
    act(() => workbench.undo());
    expect(openDesign().primary.tap).toBe(before);
  });

  it("keeps the old curves, can be given up, and computes again", () => {
    sweep();
    act(() => workbench.setValue("interrupter.onTime", 100e-6));
    expect(screen.getByRole("img", { name: /^Energy into the spark/ })).toBeInTheDocument();
    act(energySweeps.cancel);
    sweep();
    expect(screen.getByText("These curves are out of date.")).toBeInTheDocument();
    fireEvent.click(screen.getByRole("button", { name: "Compute again" }));
    expect(screen.getByRole("button", { name: "Use this tap" })).toBeInTheDocument();
    expect(screen.getAllByText(/100.µs, the design's on-time/)).not.toHaveLength(0);
  });

  it.each([
    ["spark.length", 0, /no spark/],
    ["interrupter.onTime", 0, /on-time is zero/],
    ["drive.switch.pulseCurrentRating", 5, /within the pulse ratings of switches and bank/],
    ["secondary.windingLength", 0.1, /cannot be computed/],
  ])("says why there is no best tap: %s at %d", (path, value, reason) => {
    act(() => workbench.setValue(path, value));
    sweep();
    expect(screen.getByText(reason)).toBeInTheDocument();
    expect(screen.queryByRole("button", { name: "Use this tap" })).not.toBeInTheDocument();
    expect(document.body.textContent).not.toMatch(/NaN|undefined|Infinity/);
  });
});
