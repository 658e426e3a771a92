import { act, fireEvent, render, screen } from "@testing-library/react";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { App } from "../../src/app/App";
import { session, workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "./browserParts";

beforeAll(addBrowserParts);

const show = () => session.store.getState().history.present;
const design = () => show().designs[show().open];
const field = (path: string) =>
  document.querySelector<HTMLInputElement>(`[data-field="${path}"]`) as HTMLInputElement;

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
    expect(screen.getByRole("dialog", { name: /before you switch anything on/i })).toBeInTheDocument();
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

  it("goes from a finding to its field", async () => {
    act(() => workbench.setValue("secondary.turns", 9000));
    const finding = await screen.findByRole("button", { name: /Warning.*Turns of 9000/ });
    Element.prototype.scrollIntoView = () => undefined;
    fireEvent.click(finding);
    expect(document.activeElement).toBe(field("secondary.turns"));
  });
});
