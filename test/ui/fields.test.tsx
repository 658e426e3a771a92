import { fireEvent, render, screen } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { ChoiceField } from "../../src/ui/ChoiceField";
import { FindingList } from "../../src/ui/FindingList";
import { SwitchField } from "../../src/ui/SwitchField";

const help = { what: "What it is.", measure: "With a rule.", typical: "Ten of them." };

describe("the other fields and the list of findings", () => {
  it("offers its options and tells which was chosen", () => {
    const onCommit = vi.fn();
    render(
      <ChoiceField label="Bridge" options={["full", "half"]} value="full" onCommit={onCommit} help={help} />,
    );
    fireEvent.change(screen.getByRole("combobox", { name: "Bridge" }), { target: { value: "half" } });
    expect(onCommit).toHaveBeenCalledExactlyOnceWith("half");
  });

  it("says what a field is, how to measure it and what is typical", () => {
    render(<SwitchField label="Walls conduct" value={false} onCommit={vi.fn()} help={help} />);
    expect(screen.getByRole("button", { name: "About Walls conduct" })).toBeInTheDocument();
    for (const text of Object.values(help)) expect(screen.getByText(text)).toBeInTheDocument();
  });

  it("says on and off as words", () => {
    const onCommit = vi.fn();
    render(<SwitchField label="Walls conduct" value={false} onCommit={onCommit} />);
    expect(screen.getByText("off")).toBeInTheDocument();
    fireEvent.click(screen.getByRole("switch", { name: "Walls conduct" }));
    expect(onCommit).toHaveBeenCalledExactlyOnceWith(true);
  });

  it("gives each severity a word and leads to the field", () => {
    const onGo = vi.fn();
    const row = {
      id: "a",
      severity: "warning" as const,
      sentence: "The wall is near.",
      where: "room.wallDistance",
    };
    render(<FindingList rows={[row]} onGo={onGo} />);
    fireEvent.click(screen.getByRole("button", { name: /^Warning:\s?The wall is near\.$/ }));
    expect(onGo).toHaveBeenCalledExactlyOnceWith("room.wallDistance");
  });
});
