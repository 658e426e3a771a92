import { fireEvent, render, screen } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { TestPulses } from "../../../src/panels/score/pattern/TestPulses";

function open() {
  const { container } = render(<TestPulses designs={{ left: pierHallLeft, right: pierHallRight }} />);
  const details = container.querySelector("details");
  if (!details) throw new Error("no details");
  details.open = true;
  fireEvent(details, new Event("toggle"));
}

function set(label: string, value: string) {
  const field = screen.getByLabelText(label);
  fireEvent.focus(field);
  fireEvent.change(field, { target: { value } });
  fireEvent.keyDown(field, { key: "Enter" });
}

describe("test pulses", () => {
  it("are made as asked for where no limit stands against them", () => {
    open();
    expect(screen.getByText("50 of 50 pulses, as requested.")).toBeInTheDocument();
    set("Groups", "2");
    expect(screen.getByText("20 of 20 pulses, as requested.")).toBeInTheDocument();
    expect(screen.getByRole("button", { name: /CSV/ })).toBeEnabled();
    expect(screen.getByText(/dead-man switch/)).toBeInTheDocument();
  });

  it("say what the limits of the coil change", () => {
    open();
    set("On-time of each pulse", "1 ms");
    expect(screen.getByText("50 of 50 pulses: 50 × shortened by limit.")).toBeInTheDocument();
    set("Rate within a group", "1.9 kHz");
    expect(screen.getByText(/^0 of 50 pulses: 50 × too short to sound\.$/)).toBeInTheDocument();
  });
});
