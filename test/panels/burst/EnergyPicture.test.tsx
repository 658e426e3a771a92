import { act, render, screen } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { BurstResults } from "../../../src/panels/burst/BurstResults";
import { EnergyPicture } from "../../../src/panels/burst/EnergyPicture";
import { workbench } from "../../../src/workbench/session/session";

beforeEach(() => {
  workbench.resetToExamples();
});

const PARTS = [
  "Spark",
  "Winding",
  "Primary conductor",
  "Capacitor bank",
  "Switches, conduction",
  "Returned to reservoir",
];

describe("the picture of a burst's energy", () => {
  it("names every part with its joules and its share, and the shares come to the whole", () => {
    render(<EnergyPicture />);
    for (const part of PARTS) expect(screen.getByText(part)).toBeInTheDocument();
    const shares = screen
      .getAllByRole("definition")
      .map((each) => each.textContent ?? "")
      .filter((text) => text.endsWith("%"))
      .map((text) => (text.startsWith("<") ? 0 : Number.parseFloat(text)));
    // three digits each
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(100, 0);
    expect(screen.getByText(/^Turn-off loss of the switches/)).toHaveTextContent(/Error of the balance/);
    expect(document.body.textContent).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("leaves out what is nothing", () => {
    act(() => workbench.setValue("spark.length", 0));
    render(<EnergyPicture />);
    expect(screen.queryByText("Spark")).toBeNull();
    expect(screen.getByText("Winding")).toBeInTheDocument();
  });

  it("says why it is not there", () => {
    act(() => workbench.setValue("interrupter.onTime", 0));
    render(<EnergyPicture />);
    expect(screen.getByText(/takes no energy/)).toBeInTheDocument();
    act(() => workbench.setValue("secondary.windingLength", 0.1));
    expect(screen.getByText(/cannot be computed/)).toBeInTheDocument();
  });
});

describe("the burst in figures", () => {
  it("shows peaks, limit, frequency, sag and what the spark gets", () => {
    render(<BurstResults />);
    for (const label of ["Peak primary current", "Running frequency", "Energy into the spark"])
      expect(screen.getByText(label)).toBeInTheDocument();
    expect(document.body.textContent).not.toMatch(/NaN|undefined|Infinity/);
  });
});
