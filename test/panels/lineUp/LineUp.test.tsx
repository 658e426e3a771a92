import { fireEvent, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { LineUp } from "../../../src/panels/lineUp/LineUp";
import { session, workbench } from "../../../src/workbench/session";
import { addBrowserParts } from "../../app/browserParts";

beforeAll(addBrowserParts);
beforeEach(() => {
  workbench.resetToExamples();
  render(<LineUp />);
});

const show = () => session.store.getState().history.present;

async function add(size: string) {
  await userEvent.selectOptions(screen.getByLabelText("Stock size"), size);
}

describe("the line-up", () => {
  it("compares stock sizes and the design's own top load, four at most", async () => {
    fireEvent.click(screen.getByRole("button", { name: /This design's top load/ }));
    await add("400 × 100 mm toroid");
    await add("300 mm sphere");
    await add("200 mm sphere");
    expect(show().lineUp.candidates.map(({ name }) => name)).toEqual([
      "460 × 110 mm",
      "400 × 100 mm",
      "⌀ 300 mm",
      "⌀ 200 mm",
    ]);
    expect(screen.getByLabelText("Stock size")).toBeDisabled();
  });

  it("shows each one's capacitance and resonance, as the model computes them", async () => {
    await add("1000 × 250 mm toroid");
    const row = await screen.findByRole("row", { name: /Capacitance, isolated/ });
    // the exact series gives 43.00 pF for this torus (reference/capacitance.json)
    expect(within(row).getByRole("cell").textContent).toMatch(/^43\.00/);
  });

  it("puts one into the design as one step, and leaves the design alone until then", async () => {
    await add("400 × 100 mm toroid");
    const own = show().designs[show().open].topLoad;
    expect(own.elements[0]).toMatchObject({ outerDiameter: 0.46 });
    fireEvent.click(screen.getByRole("button", { name: "Put in 400 × 100 mm" }));
    expect(show().designs[show().open].topLoad.elements[0]).toMatchObject({
      outerDiameter: 0.4,
      tubeDiameter: 0.1,
    });
    workbench.undo();
    expect(show().designs[show().open].topLoad).toEqual(own);
  });

  it("takes free sizes, and its name follows", async () => {
    await add("400 × 100 mm toroid");
    const outer = screen.getByLabelText("Outer diameter");
    await userEvent.clear(outer);
    await userEvent.type(outer, "420{Enter}");
    expect(show().lineUp.candidates[0].name).toBe("420 × 100 mm");
  });
});
