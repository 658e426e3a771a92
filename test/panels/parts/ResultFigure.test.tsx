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
  const popover = document.getElementById(button.getAttribute("popovertarget") ?? "");
  if (!popover) throw new Error("the figure has no popover");
  fireEvent(popover, Object.assign(new Event("beforetoggle"), { newState: "open" }));
  return popover;
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
    const popover = open(figure(entry.id));
    for (const text of [entry.words, entry.formula, sourceText(entry.source), entry.validity, entry.accuracy])
      expect(popover).toHaveTextContent(text);
    expect(popover).toHaveAttribute("aria-label", `${entry.label}, ${entry.symbol}`);
  });

  it("makes nothing of it until it is pressed", () => {
    const button = figure("secondary.resonance");
    const { words } = resultEntry("secondary.resonance");
    expect(screen.queryByText(words)).toBeNull();
    expect(open(button)).toHaveTextContent(words);
  });

  it("gives the inputs with their present values", () => {
    const popover = open(figure("tank.capacitance"));
    expect(popover).toHaveTextContent(`: ${pierHallLeft.tank.strings}`);
    const fields = within(popover).getAllByRole("button", { hidden: true });
    expect(fields).toHaveLength(resultEntry("tank.capacitance").inputs.length);
  });

  it("goes to the field of an input, and offers no way where the input is a result", () => {
    const popover = open(figure("primary.resonance"));
    expect(popover).not.toHaveTextContent(/NaN|undefined|null/);
    const [first] = within(popover).getAllByRole("button", { hidden: true });
    fireEvent.click(first);
    expect(go).toHaveBeenCalledTimes(1);
    expect(resultEntry("primary.resonance").inputs).toContain(go.mock.calls[0][0]);
  });
});
