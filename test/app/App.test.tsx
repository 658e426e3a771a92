import { act, fireEvent, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { App } from "../../src/app/App";
import { serialiseDesign } from "../../src/design/design";
import { pierHallLeft } from "../../src/design/examples";
import { session, workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "./browserParts";

beforeAll(addBrowserParts);

const show = () => session.store.getState().history.present;
const design = () => show().designs[show().open];
const field = (path: string) =>
  document.querySelector<HTMLInputElement>(`[data-field="${path}"]`) as HTMLInputElement;

function dropFile(text: string, name = "coil.json") {
  const file = new File([text], name, { type: "application/json" });
  const drop = Object.assign(new Event("drop", { bubbles: true, cancelable: true }), {
    dataTransfer: { types: ["Files"], files: [file] },
  });
  return act(async () => {
    window.dispatchEvent(drop);
    await file.text();
  });
}

beforeEach(() => {
  workbench.resetToExamples();
  render(<App />);
  const acknowledge = screen.queryByRole("button", { name: /read and understood/ });
  if (acknowledge) fireEvent.click(acknowledge);
});

describe("the whole screen", () => {
  it("asks for the cautions once and gives them again from the header", () => {
    expect(screen.queryByText(/A coil of this kind can kill/)).toBeNull();
    fireEvent.click(screen.getByRole("button", { name: "Cautions" }));
    expect(screen.getByRole("dialog", { name: /before anything is switched on/i })).toBeInTheDocument();
  });

  it("shows inches at the unit switch and leaves the design as it is", () => {
    const before = design();
    fireEvent.click(screen.getByRole("radio", { name: "inch" }));
    expect(field("secondary.formerDiameter").value).toBe("4.92126");
    fireEvent.focus(field("secondary.formerDiameter"));
    fireEvent.blur(field("secondary.formerDiameter"));
    fireEvent.click(screen.getByRole("radio", { name: "mm" }));
    expect(field("secondary.formerDiameter").value).toBe("125");
    expect(design()).toBe(before);
  });

  it("takes a step back and forth by keyboard", async () => {
    const user = userEvent.setup();
    act(() => workbench.setValue("secondary.turns", 1234));
    await user.keyboard("{Control>}z{/Control}");
    expect(design().secondary.turns).not.toBe(1234);
    await user.keyboard("{Control>}{Shift>}z{/Shift}{/Control}");
    expect(design().secondary.turns).toBe(1234);
    await user.keyboard("{Control>}z{/Control}{Control>}y{/Control}");
    expect(design().secondary.turns).toBe(1234);
  });

  it("renames the open design in its title cell, and ignores an empty title", async () => {
    const user = userEvent.setup();
    const title = document.getElementById("design-title") as HTMLInputElement;
    await user.clear(title);
    await user.type(title, "Hall coil{Enter}");
    expect(design().title).toBe("Hall coil");
    await user.clear(title);
    act(() => title.blur());
    expect(design().title).toBe("Hall coil");
    expect(title.value).toBe("Hall coil");
  });

  it("lists the designs in a menu that arrows walk and Escape closes", async () => {
    const user = userEvent.setup();
    await user.click(screen.getByRole("button", { name: "Designs and files" }));
    expect(screen.getAllByRole("menuitemradio")).toHaveLength(show().order.length);
    await user.keyboard("{ArrowDown}{Enter}");
    expect(show().open).toBe(show().order[1]);
    await user.click(screen.getByRole("button", { name: "Designs and files" }));
    await user.keyboard("{Escape}");
    expect(screen.queryByRole("menu")).toBeNull();
    expect(document.activeElement).toBe(screen.getByRole("button", { name: "Designs and files" }));
  });

  it("opens a design that is dropped", async () => {
    const count = show().order.length;
    await dropFile(serialiseDesign({ ...pierHallLeft, title: "Dropped coil" }));
    await waitFor(() => expect(design().title).toBe("Dropped coil"));
    expect(show().order).toHaveLength(count + 1);
  });

  it("refuses a wrong file with path and reason, and changes nothing", async () => {
    const before = show();
    const wrong = serialiseDesign(pierHallLeft).replace('"turns": 1480', '"turns": 0');
    expect(wrong).toContain('"turns": 0');
    await dropFile(wrong, "wrong.json");
    expect(await screen.findByRole("dialog", { name: "This file was not opened" })).toBeInTheDocument();
    expect(screen.getByText("secondary.turns")).toBeInTheDocument();
    expect(show()).toBe(before);
  });

  it("says of a score that is dropped where it is opened", async () => {
    const before = show();
    await dropFile("MThd\u0000\u0000\u0000\u0006", "tune.mid");
    expect(await screen.findByText(/Standard MIDI File: open it in the Score tab/)).toBeInTheDocument();
    expect(show()).toBe(before);
  });

  it("slides the tap as one step and gives it back at Escape", () => {
    const slider = screen.getByRole("slider", { name: "Tap along the primary" });
    const before = design().primary.tap;
    const steps = session.store.getState().history.past.length;
    fireEvent.change(slider, { target: { value: "5" } });
    fireEvent.change(slider, { target: { value: "5.5" } });
    fireEvent.pointerUp(slider);
    expect(design().primary.tap).toBe(5.5);
    expect(session.store.getState().history.past).toHaveLength(steps + 1);
    fireEvent.change(slider, { target: { value: "4" } });
    fireEvent.keyDown(slider, { key: "Escape" });
    expect(design().primary.tap).toBe(5.5);
    act(() => workbench.undo());
    expect(design().primary.tap).toBe(before);
  });

  it("goes from a finding to its field", async () => {
    act(() => workbench.setValue("secondary.turns", 9000));
    const finding = await screen.findByRole("button", { name: /Warning.*Turns of 9000/ });
    Element.prototype.scrollIntoView = () => undefined;
    fireEvent.click(finding);
    expect(document.activeElement).toBe(field("secondary.turns"));
  });
});
