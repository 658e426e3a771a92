import { act, fireEvent, render, screen, within } from "@testing-library/react";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { pierHallLeft } from "../../../src/design/examples";
import { evaluate } from "../../../src/evaluation/evaluate";
import { resultEntry } from "../../../src/evaluation/register/register";
import { sourceText } from "../../../src/evaluation/register/sourceText";
import { GoToField } from "../../../src/panels/parts/GoToField";
import { ResultFigure } from "../../../src/panels/parts/ResultFigure";
import { session, workbench } from "../../../src/workbench/session/session";

const evaluation = evaluate(pierHallLeft);
const go = vi.fn();

function figure(id: string) {
  render(
    <GoToField value={go}>
      <dl>
        <ResultFigure id={id} />
      </dl>
    </GoToField>,
  );
  act(() => session.store.setState({ evaluation }));
  return screen.getByRole("button", { name: /Where it comes from$/ });
}

/** The test's DOM knows no popovers, so the event that a press causes is sent by hand. */
function open(button: HTMLElement): HTMLElement {
  const slip = document.getElementById(button.getAttribute("popovertarget") ?? "");
  if (!slip) throw new Error("the figure has no slip");
  fireEvent(slip, Object.assign(new Event("beforetoggle"), { newState: "open" }));
  return slip;
}

beforeEach(() => {
  go.mockClear();
  workbench.resetToExamples();
});

describe("a result's figure", () => {
  it("is a button called by its caption and its present value", () => {
    expect(figure("coupling.circuit")).toHaveAccessibleName(
      new RegExp(`^${resultEntry("coupling.circuit").label}: 0\\.\\d+`),
    );
  });

  it("says what it is, its formula, its source, where it holds and how far to trust it", () => {
    const entry = resultEntry("secondary.resonance");
    const slip = open(figure(entry.id));
    for (const text of [entry.words, entry.formula, sourceText(entry.source), entry.validity, entry.accuracy])
      expect(slip).toHaveTextContent(text);
    expect(slip).toHaveAttribute("aria-label", `${entry.label}, ${entry.symbol}`);
  });

  it("makes nothing of it until it is pressed", () => {
    const button = figure("secondary.resonance");
    const { words } = resultEntry("secondary.resonance");
    expect(screen.queryByText(words)).toBeNull();
    expect(open(button)).toHaveTextContent(words);
  });

  it("gives the inputs with their present values", () => {
    const slip = open(figure("tank.capacitance"));
    expect(slip).toHaveTextContent(`: ${pierHallLeft.tank.strings}`);
    const fields = within(slip).getAllByRole("button", { hidden: true });
    expect(fields).toHaveLength(resultEntry("tank.capacitance").inputs.length);
  });

  it("goes to the field of an input, and offers no way where the input is a result", () => {
    const slip = open(figure("primary.resonance"));
    expect(slip).not.toHaveTextContent(/NaN|undefined|null/);
    const [first] = within(slip).getAllByRole("button", { hidden: true });
    fireEvent.click(first);
    expect(go).toHaveBeenCalledTimes(1);
    expect(resultEntry("primary.resonance").inputs).toContain(go.mock.calls[0][0]);
  });
});
