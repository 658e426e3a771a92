import { act, fireEvent, render, screen } from "@testing-library/react";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { ResponseChart } from "../../src/charts/ResponseChart";
import { TuningChart } from "../../src/charts/TuningChart";
import { workbench } from "../../src/workbench/session";
import { addBrowserParts } from "../app/browserParts";

beforeAll(addBrowserParts);
beforeEach(() => {
  workbench.resetToExamples();
});

describe("the tuning chart", () => {
  it("has a name, a table for those who do not see it, and a switch for each curve", () => {
    render(<TuningChart />);
    expect(screen.getByRole("img", { name: /^Tuning: resonance against tap/ })).toBeInTheDocument();
    expect(screen.getByRole("columnheader", { name: "Secondary, no spark" })).toBeInTheDocument();
    const primary = screen.getByRole("button", { name: "Primary" });
    expect(primary).toHaveAttribute("aria-pressed", "true");
    fireEvent.click(primary);
    expect(primary).toHaveAttribute("aria-pressed", "false");
    expect(screen.queryByRole("columnheader", { name: "Primary" })).toBeNull();
  });

  it("says why it is empty while the coil has no solution", () => {
    act(() => workbench.setValue("secondary.windingLength", 0.1));
    render(<TuningChart />);
    expect(screen.getByText(/cannot be drawn/)).toBeInTheDocument();
  });
});

describe("the response charts", () => {
  it("show top voltage, impedance, phase and current, with and without the spark", () => {
    render(<ResponseChart />);
    for (const title of [/^Top voltage/, /^Input impedance/, /^Phase/, /^Bridge current/]) {
      expect(screen.getByRole("img", { name: title })).toBeInTheDocument();
    }
    expect(screen.getAllByRole("button", { name: "With the spark" })).toHaveLength(4);
  });
});
