import { act, fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { BurstChart } from "../../src/charts/BurstChart";
import { session, workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "../app/browserParts";

beforeAll(addBrowserParts);
beforeEach(() => {
  workbench.resetToExamples();
});

function burst() {
  const { evaluation } = session.store.getState();
  if (!evaluation.burst) throw new Error("the example has a burst");
  return evaluation.burst;
}

/** The chart of that name, with its legend and its table. */
function figure(name: RegExp): HTMLElement {
  const chart = screen.getByRole("img", { name }).closest("figure");
  if (!chart) throw new Error("a chart stands in a figure");
  return chart;
}

function show(part: string): void {
  fireEvent.change(screen.getByLabelText("Time shown"), { target: { value: part } });
}

describe("the burst charts", () => {
  it("show current, voltage and running frequency, with the spark and without", () => {
    render(<BurstChart />);
    for (const name of [/^Primary current/, /^Top voltage/]) {
      const chart = within(figure(name));
      for (const label of ["Waveform", "Envelope", "Envelope, no spark"])
        expect(chart.getByRole("button", { name: label })).toHaveAttribute("aria-pressed", "true");
      expect(chart.getByRole("button", { name: "Waveform, no spark" })).toHaveAttribute(
        "aria-pressed",
        "false",
      );
    }
    const frequency = within(figure(/^Running frequency/));
    for (const label of ["Each cycle", "Each cycle, no spark", "Lower pole", "Upper pole"])
      expect(frequency.getByRole("button", { name: label })).toHaveAttribute("aria-pressed", "true");
    expect(document.body.textContent).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("mark the limit, the end of the drive, and every interval of the gates", async () => {
    render(<BurstChart />);
    const chart = figure(/^Primary current/);
    const count = (polarity: number) => burst().gates.filter((gate) => gate.polarity === polarity).length;
    const blocks = () =>
      [...chart.querySelectorAll("path")]
        .map((path) => path.getAttribute("d") ?? "")
        .filter((path) => /^M[\d.]+ 0H/.test(path))
        .map((path) => path.split("M").length - 1);
    // frame, curves and strips are drawn one after the other
    await waitFor(() => expect(blocks()).toEqual([count(1), count(-1)]));
    expect(within(chart).getByText("Over-current limit 480 A")).toBeInTheDocument();
    expect(within(chart).getByText("Drive ends 120 µs")).toBeInTheDocument();
  });

  it("name a limit that is too far above the current to be drawn", () => {
    act(() => workbench.setValue("drive.overCurrentLimit", 5000));
    render(<BurstChart />);
    expect(screen.getByText("Over-current limit 5 kA, off scale")).toBeInTheDocument();
  });

  it("tell when the limit ends the burst", () => {
    act(() => workbench.setValue("drive.overCurrentLimit", 150));
    render(<BurstChart />);
    expect(within(figure(/^Primary current/)).getByText(/^Limit reached \d/)).toBeInTheDocument();
    expect(within(figure(/^Top voltage/)).getByText(/^Limit reached, no spark \d/)).toBeInTheDocument();
  });

  it.each([
    ["first cycles", 0, 5],
    ["last cycles", -3, 2],
  ])("show the %s closely", async (part, from, to) => {
    render(<BurstChart />);
    show(part);
    const cycle = 1e6 / (burst().runningFrequency ?? 0);
    const origin = part === "first cycles" ? 0 : burst().driveEnd * 1e6;
    // the table may follow after a pause
    await waitFor(() => {
      const rows = within(figure(/^Primary current/)).getAllByRole("rowheader");
      const [first, last] = [rows[0], rows[rows.length - 1]].map((row) =>
        Number.parseFloat(row.textContent ?? ""),
      );
      expect(first).toBeGreaterThan(origin + (from - 1) * cycle);
      expect(first).toBeLessThanOrEqual(origin + from * cycle + 1e-6);
      expect(last).toBeGreaterThanOrEqual(origin + to * cycle - 1e-6);
      expect(last).toBeLessThan(origin + (to + 1) * cycle);
    });
  });

  it("say why they are not there", () => {
    act(() => workbench.setValue("secondary.windingLength", 0.1));
    const { unmount } = render(<BurstChart />);
    expect(screen.getByText(/cannot be computed/)).toBeInTheDocument();
    unmount();
    act(() => workbench.resetToExamples());
    act(() => workbench.setValue("interrupter.onTime", 0));
    render(<BurstChart />);
    expect(screen.getByText(/has no drive/)).toBeInTheDocument();
  });

  it("have no curves of a spark and without one where the design has none", () => {
    act(() => workbench.setValue("spark.length", 0));
    render(<BurstChart />);
    expect(screen.queryByRole("button", { name: "Envelope, no spark" })).toBeNull();
  });
});
