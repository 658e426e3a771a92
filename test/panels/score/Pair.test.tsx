import { fireEvent, render, screen } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { Pair } from "../../../src/panels/score/pair/Pair";
import { session, workbench } from "../../../src/workbench/session/session";

const show = () => session.store.getState().history.present;

function open() {
  const { container } = render(<Pair />);
  const details = container.querySelector("details");
  if (!details) throw new Error("no details");
  details.open = true;
  fireEvent(details, new Event("toggle"));
}

beforeEach(() => workbench.resetToExamples());

describe("the pair of coils", () => {
  it("tells coupling, split, taps and voltage in sentences, without a number that is none", async () => {
    open();
    expect(await screen.findByText(/The pair resonates at .* in phase and at .* opposed/)).toBeVisible();
    expect(screen.getAllByRole("listitem")).toHaveLength(9);
    expect(screen.getByRole("img", { name: /to one scale/ })).toBeInTheDocument();
    expect(document.body.textContent).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("refuses a spacing that puts one coil into the other, and says what to set", () => {
    open();
    const field = screen.getByLabelText("Spacing of the coils");
    fireEvent.focus(field);
    fireEvent.change(field, { target: { value: "0.3 m" } });
    fireEvent.keyDown(field, { key: "Enter" });
    expect(show().spacing).toBeCloseTo(0.3, 12);
    expect(screen.getByRole("alert")).toHaveTextContent(/set it above/);
  });

  it("follows the phase and leaves the pair where there is no right coil", () => {
    open();
    fireEvent.change(screen.getByLabelText("Phase of the top voltages"), { target: { value: "opposed" } });
    expect(show().phase).toBe("opposed");
    expect(screen.getByText(/opposed, the voltage across the clearance/)).toBeInTheDocument();
    fireEvent.change(screen.getByLabelText("Right coil"), { target: { value: "" } });
    expect(show().right).toBeNull();
    expect(screen.getByText(/Choose a design for the right coil/)).toBeInTheDocument();
  });
});
