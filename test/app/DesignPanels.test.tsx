import { act, fireEvent, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { DesignPanels } from "../../src/app/DesignPanels";
import { valueAt } from "../../src/design/changeAt";
import type { Design } from "../../src/design/design";
import { allFields } from "../../src/fields/allFields";
import { session, workbench } from "../../src/workbench/session/session";
import { addBrowserParts } from "./browserParts";

beforeAll(addBrowserParts);

const design = (): Design => {
  const { designs, open } = session.store.getState().history.present;
  return designs[open];
};
const field = (path: string) => document.querySelector<HTMLInputElement>(`[data-field="${path}"]`);
const group = (name: string) => within(screen.getByRole("group", { name }));

beforeEach(() => {
  workbench.resetToExamples();
  render(<DesignPanels />);
});

describe("the panels of a design", () => {
  it("hold every field that is declared, wherever the design has it", () => {
    act(() =>
      workbench.setValue("topLoad.elements", [
        ...design().topLoad.elements,
        { shape: "sphere", diameter: 0.2, centreHeight: 1.2 },
      ]),
    );
    const paths = allFields.map(({ path }) =>
      path.replace("elements.*.diameter", "elements.1.diameter").replaceAll("*", "0"),
    );
    const missing = paths.filter((path) => valueAt(design(), path) !== undefined && !field(path));
    expect(missing).toEqual([]);
  });

  it("give every field a name", () => {
    const inputs = [...document.querySelectorAll<HTMLInputElement>("[data-field]")];
    expect(
      inputs.filter((input) => !document.querySelector(`label[for="${input.id}"]`)?.textContent),
    ).toEqual([]);
  });

  it("put what is typed into the design as one step, and show what is taken back", async () => {
    const user = userEvent.setup();
    const turns = field("secondary.turns") as HTMLInputElement;
    const before = turns.value;
    await user.clear(turns);
    await user.type(turns, "1500{Enter}");
    expect(design().secondary.turns).toBe(1500);
    act(() => workbench.undo());
    expect(turns.value).toBe(before);
  });

  it("keep what has no meaning as a draft with a sentence that names field and value", async () => {
    const user = userEvent.setup();
    const length = field("secondary.windingLength") as HTMLInputElement;
    const before = design();
    await user.clear(length);
    await user.type(length, "-5{Enter}");
    expect(length.value).toBe("-5");
    expect(screen.getByText(/Winding length must be above zero, but it is -5.mm/)).toBeInTheDocument();
    expect(design()).toBe(before);
  });

  it("show a warning beside a value beyond its range, and keep the value", async () => {
    const user = userEvent.setup();
    const turns = field("secondary.turns") as HTMLInputElement;
    await user.clear(turns);
    await user.type(turns, "9000{Enter}");
    expect(design().secondary.turns).toBe(9000);
    expect(await screen.findByText(/is outside the range/)).toBeInTheDocument();
  });

  it("add and remove toroids and spheres clear of what stands below", () => {
    fireEvent.click(screen.getByRole("button", { name: "Sphere" }));
    const [toroid, sphere] = design().topLoad.elements;
    expect(sphere.shape).toBe("sphere");
    if (toroid.shape !== "toroid" || sphere.shape !== "sphere")
      throw new Error("a toroid and a sphere were expected");
    expect(sphere.centreHeight - sphere.diameter / 2).toBeGreaterThan(
      toroid.centreHeight + toroid.tubeDiameter / 2,
    );
    fireEvent.click(screen.getByRole("button", { name: "Move Sphere 2 up" }));
    expect(design().topLoad.elements[0].shape).toBe("sphere");
    fireEvent.click(screen.getByRole("button", { name: "Remove Sphere 1" }));
    expect(design().topLoad.elements).toEqual([toroid]);
  });

  it("take the strike rail out and put it back", () => {
    fireEvent.click(group("Strike rail").getByRole("button", { name: "Remove" }));
    expect(design().primary.strikeRail).toBeNull();
    expect(field("primary.strikeRail.radius")).toBeNull();
    fireEvent.click(group("Strike rail").getByRole("button", { name: "Add" }));
    expect(design().primary.strikeRail?.radius).toBeGreaterThan(0);
  });

  it("ask the length only of an aim at a spark", () => {
    const aim = field("tuningAim.kind") as HTMLInputElement;
    fireEvent.change(aim, { target: { value: "unloaded" } });
    expect(design().tuningAim).toEqual({ kind: "unloaded" });
    expect(field("tuningAim.length")).toBeNull();
    fireEvent.change(aim, { target: { value: "spark" } });
    expect(design().tuningAim).toEqual({ kind: "spark", length: design().spark.length });
  });
});
