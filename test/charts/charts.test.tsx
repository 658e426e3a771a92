import { act, fireEvent, render, screen, waitFor } from "@testing-library/react";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { ResponseChart } from "../../src/charts/ResponseChart";
import { TuningChart } from "../../src/charts/TuningChart";
import { session, workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "../app/browserParts";

beforeAll(addBrowserParts);
beforeEach(() => {
  workbench.resetToExamples();
});

describe("the tuning chart", () => {
  it("has a name, a table for those who do not see it, and a switch for each curve", async () => {
    render(<TuningChart />);
    expect(screen.getByRole("img", { name: /^Tuning: resonance against tap/ })).toBeInTheDocument();
    expect(screen.getByRole("columnheader", { name: "Secondary, no spark" })).toBeInTheDocument();
    const primary = screen.getByRole("button", { name: "Primary" });
    expect(primary).toHaveAttribute("aria-pressed", "true");
    fireEvent.click(primary);
    expect(primary).toHaveAttribute("aria-pressed", "false");
    await waitFor(() => expect(screen.queryByRole("columnheader", { name: "Primary" })).toBeNull());
  });

  it("says why it is empty while the coil has no solution", () => {
    act(() => workbench.setValue("secondary.windingLength", 0.1));
    render(<TuningChart />);
    expect(screen.getByText(/cannot be computed/)).toBeInTheDocument();
  });
});

describe("the present tap on the tuning chart", () => {
  const tap = () => {
    const { present } = session.store.getState().history;
    return present.designs[present.open].primary.tap;
  };
  const grasp = async () => {
    // jsdom captures no pointers
    Element.prototype.setPointerCapture ??= () => undefined;
    const { container } = render(<TuningChart />);
    const marker = await waitFor(() => {
      const found = container.querySelector('rect[style*="ew-resize"]');
      if (!found) throw new Error("nothing to grasp");
      return found;
    });
    const x = Number(marker.getAttribute("x")) + 13;
    return { marker, x };
  };
  const pointer = (type: string, clientX: number) =>
    Object.assign(new MouseEvent(type, { bubbles: true, clientX }), { pointerId: 1 });

  it("does not move when it is grasped beside its middle, and follows the pointer from there", async () => {
    const before = tap();
    const { marker, x } = await grasp();
    fireEvent(marker, pointer("pointerdown", x + 8));
    fireEvent(marker, pointer("pointermove", x + 8));
    expect(tap()).toBeCloseTo(before, 6);
    fireEvent(marker, pointer("pointermove", x - 40));
    const moved = tap();
    expect(moved).toBeLessThan(before - 0.3);
    fireEvent(marker, pointer("pointerup", x - 40));
    expect(tap()).toBe(moved);
    act(() => workbench.undo());
    expect(tap()).toBe(before);
  });

  it("goes back by Esc, and no longer follows", async () => {
    const before = tap();
    const { marker, x } = await grasp();
    fireEvent(marker, pointer("pointerdown", x));
    fireEvent(marker, pointer("pointermove", x - 40));
    expect(tap()).toBeLessThan(before);
    fireEvent.keyDown(window, { key: "Escape" });
    expect(tap()).toBe(before);
    fireEvent(marker, pointer("pointermove", x - 80));
    fireEvent(marker, pointer("pointerup", x - 80));
    expect(tap()).toBe(before);
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

  it("mark the pole that the burst runs on, and follow it when the tap takes it to the other", () => {
    render(<ResponseChart />);
    expect(screen.getAllByText(/runs on the upper pole/)).toHaveLength(4);
    act(() => workbench.setValue("primary.tap", 7.4));
    expect(screen.getAllByText(/runs on the lower pole/)).toHaveLength(4);
  });
});
