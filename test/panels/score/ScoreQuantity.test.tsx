import { fireEvent, render, screen } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { defaultArrangement } from "../../../src/design/arrangement";
import { arrangementFields, laneFields } from "../../../src/fields/showFields";
import { meaningRefusal } from "../../../src/panels/parts/meaning";
import { ArrangementFields } from "../../../src/panels/score/ArrangementFields";
import { session, workbench } from "../../../src/workbench/session/session";

const history = () => session.store.getState().history;
const type = (label: string, text: string) => {
  const field = screen.getByLabelText(label);
  fireEvent.focus(field);
  fireEvent.change(field, { target: { value: text } });
  return field;
};

describe("the arrangement's fields", () => {
  beforeEach(() => {
    workbench.resetToExamples();
    render(<ArrangementFields arrangement={defaultArrangement} />);
  });

  it("keep what is typed as a draft until Enter, and make one step of it", () => {
    const steps = history().past.length;
    const field = type("On-time at full velocity", "80 µs");
    expect(history().present.arrangement.onTime).toBe(defaultArrangement.onTime);
    fireEvent.keyDown(field, { key: "Enter" });
    expect(history().present.arrangement.onTime).toBeCloseTo(80e-6, 12);
    expect(history().past.length).toBe(steps + 1);
  });

  it.each(["17", "0", "2.5"])("refuse %s voices with a sentence and bend nothing", (text) => {
    const field = type("Voices on a coil", text);
    fireEvent.blur(field);
    expect(field).toHaveValue(text);
    expect(screen.getByText(/Voices on a coil must/)).toBeInTheDocument();
    expect(history().present.arrangement.voices).toBe(defaultArrangement.voices);
  });
});

describe("a refusal of the score", () => {
  it("names field, value and span", () => {
    expect(meaningRefusal(laneFields.level, 1.5, "metric")).toMatch(
      /Level must be between 0.% and 100.%, but it is 150.%/,
    );
    expect(meaningRefusal(laneFields.transpose, 0.5, "metric")).toMatch(/whole number/);
    expect(meaningRefusal(laneFields.transpose, -128, "metric")).toMatch(/between [-−]127 and 127/);
    expect(meaningRefusal(arrangementFields.kneeRate, 0, "metric")).toMatch(/above zero/);
  });

  it("is null for every declared default", () => {
    for (const field of [...Object.values(arrangementFields), ...Object.values(laneFields)])
      expect(meaningRefusal(field, field.default ?? Number.NaN, "metric")).toBeNull();
  });
});
