import { REFERENCE_TABLE } from "virtual:reference-table";
import { fireEvent, render, screen, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { RESULTS } from "../../../src/evaluation/register/register";
import { OTHER_RESULTS, REPEATED_RESULTS, SECTIONS } from "../../../src/panels/theory/sections";
import { Theory } from "../../../src/panels/theory/Theory";

const models = SECTIONS.flatMap(({ models: ones }) => ones);

describe("the theory page", () => {
  it("tells of every registered result once", () => {
    const rest = [...OTHER_RESULTS, ...REPEATED_RESULTS].map(({ id }) => id);
    const told = [...models.flatMap(({ results }) => results), ...rest];
    expect(told.sort()).toEqual(RESULTS.map(({ id }) => id).sort());
  });

  it("shows every group of references once, under the section it checks", () => {
    const shown = SECTIONS.flatMap(({ checkedBy }) => checkedBy);
    expect([...shown].sort()).toEqual([...new Set(REFERENCE_TABLE.map(({ group }) => group))].sort());
  });

  it("gives each model a source", () => {
    expect(models.filter(({ source }) => source.length === 0)).toEqual([]);
  });

  it("shows words, equations and formulas of the register", () => {
    render(<Theory />);
    const section = screen.getByRole("region", { name: "Modes of the secondary" });
    expect(within(section).getByRole("heading", { name: "A distributed resonator" })).toBeVisible();
    expect(within(section).getAllByText("(P − ω²·SᵀLS)·q = 0").length).toBeGreaterThan(0);
    expect(within(section).getAllByText("eff", { selector: "sub" }).length).toBeGreaterThan(0);
  });

  it("shows a reference with what is computed for it, and how near", () => {
    const { container } = render(<Theory />);
    expect(container.querySelectorAll("td").length).toBe(4 * REFERENCE_TABLE.length);
    const row = screen.getByText("Isolated sphere of 0.1 m radius, 4πε₀a").closest("tr") as HTMLElement;
    expect(within(row).getAllByText(/^1\.11265.×.10⁻¹¹/)).toHaveLength(2);
    expect(row).toHaveTextContent(/%/);
  });

  it("leads from its contents to a section", () => {
    render(<Theory />);
    fireEvent.click(screen.getByRole("button", { name: "Losses" }));
    expect(screen.getByRole("heading", { name: "Losses" })).toHaveFocus();
  });
});
