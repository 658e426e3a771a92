import { act, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeEach, describe, expect, it } from "vitest";
import { GoneNotice } from "../../src/app/GoneNotice";
import { exampleShow, pierHallLeft } from "../../src/design/examples";
import { session, workbench } from "../../src/workbench/session/session";

const show = () => session.store.getState().history.present;
const text = () => document.body.textContent ?? "";

beforeEach(() => {
  act(() => workbench.resetToExamples());
  render(<GoneNotice />);
});

describe("the notice of what a step took away", () => {
  it("names the design, says who plays left and right now, and goes with undo", async () => {
    act(() => workbench.deleteDesign("left"));
    expect(text()).toContain(
      "“Pier hall, left coil” is no longer in the show. “Pier hall, right coil” is now the left coil. There is now no right coil.",
    );
    await userEvent.click(screen.getByRole("button", { name: "Undo" }));
    expect(text()).toBe("");
    expect(show()).toMatchObject({ left: "left", right: "right" });
  });

  it("says nothing of an edit of a design", () => {
    act(() => workbench.setValue("primary.tap", 5));
    expect(text()).toBe("");
  });

  it("counts what another show replaced under the same name, and not what it holds as it was", () => {
    act(() => workbench.setValue("primary.tap", 5));
    act(() => workbench.replaceShow("open tour.json", exampleShow()));
    expect(text()).toContain("“Pier hall, left coil” is replaced. Undo restores it");
  });

  it("calls a design without a title untitled", () => {
    act(() =>
      workbench.editShow("name", (all) => ({
        ...all,
        designs: { ...all.designs, left: { ...pierHallLeft, title: " \u200b" } },
      })),
    );
    act(() => workbench.deleteDesign("left"));
    expect(text()).toContain("“Untitled” is no longer in the show");
  });
});
