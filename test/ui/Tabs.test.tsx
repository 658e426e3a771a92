import { render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { describe, expect, it } from "vitest";
import { Tabs } from "../../src/ui/Tabs";

function Views() {
  const [chosen, setChosen] = useState("charts");
  const tabs = [
    { id: "design", label: "Design", content: <input aria-label="Draft" />, keep: true },
    { id: "charts", label: "Charts", content: <p>curves</p> },
  ];
  return <Tabs name="Views" tabs={tabs} chosen={chosen} onChoose={setChosen} />;
}

describe("tabs", () => {
  it("are one stop of the Tab key, and the arrows walk round and choose", async () => {
    render(<Views />);
    const user = userEvent.setup();
    await user.tab();
    expect(screen.getByRole("tab", { name: "Charts" })).toHaveFocus();
    await user.keyboard("{ArrowRight}");
    expect(screen.getByRole("tab", { name: "Design" })).toHaveFocus();
    expect(screen.getByRole("tab", { name: "Design" })).toHaveAttribute("aria-selected", "true");
    await user.keyboard("{End}");
    expect(screen.getByRole("tab", { name: "Charts" })).toHaveFocus();
  });

  it("label their panels, and drop what is out of sight unless it is to be kept", async () => {
    render(<Views />);
    const user = userEvent.setup();
    expect(screen.getByRole("tabpanel", { name: "Charts" })).toHaveTextContent("curves");
    await user.click(screen.getByRole("tab", { name: "Design" }));
    expect(screen.queryByText("curves")).toBeNull();
    await user.type(screen.getByLabelText("Draft"), "half");
    await user.click(screen.getByRole("tab", { name: "Charts" }));
    await user.click(screen.getByRole("tab", { name: "Design" }));
    expect(screen.getByLabelText("Draft")).toHaveValue("half");
  });
});
