import { fireEvent, render, screen } from "@testing-library/react";
import { beforeEach, expect, it } from "vitest";
import { StockWireField } from "../../../src/panels/secondary/StockWireField";
import { session, workbench } from "../../../src/workbench/session/session";

beforeEach(() => workbench.resetToExamples());

function wire() {
  const { present } = session.store.getState().history;
  return present.designs[present.open].secondary.wire;
}

it("sets both diameters to a standard size in one step, and says other where they are none", () => {
  const before = wire();
  render(<StockWireField />);
  const field = screen.getByRole<HTMLSelectElement>("combobox", { name: /Standard size/ });
  fireEvent.change(field, { target: { value: "0.315 mm, grade 2" } });
  // IEC 60317-0-1: 0.315 mm bare, 0.367 mm at most over grade 2
  expect(wire()).toMatchObject({ conductorDiameter: 0.315e-3, overallDiameter: 0.367e-3 });
  expect(field.value).toBe("0.315 mm, grade 2");
  fireEvent.change(field, { target: { value: "other" } });
  expect(wire()).toMatchObject({ conductorDiameter: 0.315e-3, overallDiameter: 0.367e-3 });
  workbench.undo();
  expect(wire()).toEqual(before);
});
