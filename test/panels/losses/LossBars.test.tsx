import { act, render, screen } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { LossBars } from "../../../src/panels/losses/LossBars";
import { ResponseResults } from "../../../src/panels/losses/ResponseResults";
import { workbench } from "../../../src/workbench/session/session";

beforeEach(() => {
  workbench.resetToExamples();
});

describe("the bars of losses", () => {
  it("name each part with its ohms and its share, and leave out what is nothing", () => {
    render(<LossBars />);
    for (const part of [
      "Wire, direct current",
      "Skin effect",
      "Proximity",
      "Tube",
      "Capacitor bank",
      "Switches",
    ])
      expect(screen.getByText(part)).toBeInTheDocument();
    expect(screen.queryByText("Allowance, secondary")).toBeNull();
    const shares = screen.getAllByRole("definition").filter((each) => /%$/.test(each.textContent ?? ""));
    expect(shares).toHaveLength(6);
  });

  it("show the allowance once it is stated", () => {
    render(<LossBars />);
    act(() => workbench.setValue("corrections.lossAllowance", 0.2));
    expect(screen.getByText("Allowance, secondary")).toBeInTheDocument();
    expect(screen.getByText("Allowance, primary")).toBeInTheDocument();
  });

  it("say why they are not there while the coil has no solution", () => {
    act(() => workbench.setValue("secondary.windingLength", 0.1));
    render(<LossBars />);
    expect(screen.getByText(/cannot be computed/)).toBeInTheDocument();
  });
});

describe("the response in figures", () => {
  it("shows beat, first maximum, the poles' Q and where a bridge can lock", () => {
    render(<ResponseResults />);
    for (const label of ["Beat frequency", "Q of the lower pole", "Q of the upper pole with the spark"])
      expect(screen.getByText(label)).toBeInTheDocument();
    expect(screen.getAllByText("Zero phase, no spark").length).toBeGreaterThan(0);
    expect(document.body.textContent).not.toMatch(/NaN|undefined|null|Infinity/);
  });
});
