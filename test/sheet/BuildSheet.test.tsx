import { act, render, screen } from "@testing-library/react";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { cautions } from "../../src/design/cautions";
import { BuildSheet } from "../../src/sheet/BuildSheet";
import { workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "../app/browserParts";

beforeAll(addBrowserParts);
beforeEach(() => {
  workbench.resetToExamples();
});

describe("the build sheet", () => {
  it("carries title, date, tap with its band, every turn's radius, and every caution", () => {
    render(<BuildSheet />);
    expect(screen.getByRole("heading", { level: 1, name: "Pier hall, left coil" })).toBeInTheDocument();
    expect(screen.getByText(/20\d\d-\d\d-\d\d/)).toBeInTheDocument();
    expect(screen.getByText(/6\.080.*6\.203/)).toBeInTheDocument();
    expect(screen.getAllByRole("row")).toHaveLength(1 + 9);
    for (const caution of cautions) expect(screen.getByText(`${caution.title}.`)).toBeInTheDocument();
  });

  it("says what a burst comes to and what the drive is set to", () => {
    render(<BuildSheet />);
    const row = (label: string) => screen.getByText(label).parentElement;
    expect(row("Peak primary current")).toHaveTextContent(/4\d\d\.\d.A$/);
    expect(row("Comparator voltage at the limit")).toHaveTextContent(/3\.264.V$/);
    expect(row("Transformer turns")).toHaveTextContent(/40 × 25$/);
    expect(row("Time to 60 V after switching off; measure")).toHaveTextContent(/122\.7.s$/);
  });

  it("prints no design as in order that has errors", () => {
    const { unmount } = render(<BuildSheet />);
    expect(screen.queryByRole("region", { name: /^Findings against/ })).toBeNull();
    unmount();
    act(() => workbench.setValue("drive.switch.pulseCurrentRating", 300));
    render(<BuildSheet />);
    const against = screen.getByRole("region", { name: /^Findings against/ });
    expect(against).toHaveTextContent(/do not build from this sheet/);
    expect(against).toHaveTextContent(/is above the pulse rating of 300/);
  });

  it("lists every element of the top load, two at one height too, and says where the tap lies", () => {
    const toroid = { shape: "toroid", outerDiameter: 0.46, tubeDiameter: 0.11, centreHeight: 0.745 };
    act(() =>
      workbench.setValue("topLoad.elements", [toroid, { ...toroid, outerDiameter: 0.2, tubeDiameter: 0.05 }]),
    );
    act(() => workbench.setValue("primary.tap", 6));
    render(<BuildSheet />);
    expect(screen.getAllByText(/^Toroid, centre at 745\.0/)).toHaveLength(2);
    expect(screen.getByText(/200\.0.*×.*50\.00/)).toBeInTheDocument();
    // six turns of 14.5 mm from 105 mm
    expect(screen.getByText(/^192\.0.*100\.0/)).toBeInTheDocument();
  });

  it("gives no place for a tap that is past the end", () => {
    act(() => workbench.setValue("primary.tap", 30));
    render(<BuildSheet />);
    const row = screen.getByText("Radius and height at the tap").parentElement;
    expect(row).toHaveTextContent(/–$/);
  });

  it("shows a dash and no NaN where the coil has no solution", () => {
    act(() => workbench.setValue("secondary.windingLength", 0.1));
    const { container } = render(<BuildSheet />);
    expect(container.textContent).not.toMatch(/NaN|Infinity|undefined/);
    expect(container.textContent).toContain("–");
  });
});
