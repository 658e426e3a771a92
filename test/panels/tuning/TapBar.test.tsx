import { act, fireEvent, render, screen } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import type { Evaluation } from "../../../src/evaluation/evaluation";
import type { TuningResult } from "../../../src/evaluation/tuning/tuningResults";
import { KeyNumbers } from "../../../src/panels/keyNumbers/KeyNumbers";
import { TapBar } from "../../../src/panels/tuning/TapBar";
import { energySweeps, session, workbench } from "../../../src/workbench/session/session";
import { EMPTY_EVALUATION } from "../../../src/workbench/session/workbenchState";

const tuning: TuningResult = {
  suggestedTap: 6.0841,
  suggestedTapBand: { low: 5.9, high: 6.3 },
  targetResonance: 203.1e3,
  detuning: 0.0246,
  tuned: false,
  curve: [],
};

function computed(part: Partial<Evaluation>) {
  act(() => session.store.setState({ evaluation: { ...EMPTY_EVALUATION, ...part } }));
}

const openDesign = () => {
  const { designs, open } = session.store.getState().history.present;
  return designs[open];
};

beforeEach(() => {
  workbench.resetToExamples();
  render(
    <>
      <TapBar />
      <KeyNumbers />
    </>,
  );
  computed({});
});

describe("the tap bar", () => {
  it("shows dashes and offers nothing until something is computed", () => {
    act(() => session.store.setState({ fieldRevision: 0, revision: 1 }));
    expect(screen.getByText("Not computed yet")).toBeInTheDocument();
    expect(screen.getByRole("button", { name: "Use suggested tap" })).toBeDisabled();
    expect(document.body.textContent).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it("does not promise figures to a design that has no solution", () => {
    act(() => session.store.setState({ fieldRevision: 1, revision: 1 }));
    expect(screen.getByText("No solution; see the findings")).toBeInTheDocument();
  });

  it("says in words how far off the tuning is, and on which side", () => {
    computed({ tuning });
    expect(screen.getByText("Not tuned")).toBeInTheDocument();
    expect(screen.getByText(/Primary 2.5.% above the target/)).toBeInTheDocument();
    computed({ tuning: { ...tuning, detuning: -0.001, tuned: true } });
    expect(screen.getByText("Tuned")).toBeInTheDocument();
    expect(screen.getByText(/Primary 0.10.% below the target/)).toBeInTheDocument();
    computed({ tuning: { ...tuning, detuning: 4.7e-11, tuned: true } });
    expect(screen.getByText("Primary at the target")).toBeInTheDocument();
    computed({ tuning: { ...tuning, detuning: null } });
    expect(screen.getByText("The tap is not on the conductor")).toBeInTheDocument();
  });

  it("says that bursts have to be swept where the aim asks for the most energy", () => {
    const unknown = { suggestedTap: null, suggestedTapBand: null, targetResonance: null, detuning: null };
    computed({ tuning: { ...tuning, ...unknown } });
    expect(screen.getByText("Sweep of bursts not computed yet")).toBeInTheDocument();
    act(() => energySweeps.store.setState({ sweeping: true }));
    expect(screen.getByText(/Sweeping bursts/)).toBeInTheDocument();
    act(() => energySweeps.store.setState({ sweeping: false, swept: true }));
    expect(screen.getByText(/No tap gives the spark energy/)).toBeInTheDocument();
    expect(screen.getByRole("button", { name: "Use suggested tap" })).toBeDisabled();
    act(() => energySweeps.store.setState({ swept: false }));
  });

  it("puts the suggested tap, to a thousandth of a turn, into the design as one step", () => {
    computed({ tuning });
    const before = openDesign().primary.tap;
    fireEvent.click(screen.getByRole("button", { name: "Use suggested tap" }));
    expect(openDesign().primary.tap).toBe(6.084);
    act(() => workbench.undo());
    expect(openDesign().primary.tap).toBe(before);
  });

  it("does not offer a tap beyond the last turn", () => {
    computed({ tuning: { ...tuning, suggestedTap: 30 } });
    expect(screen.getByRole("button", { name: "Use suggested tap" })).toBeDisabled();
  });
});

describe("the key numbers", () => {
  it("show a dash where nothing is computed and the unit where something is", () => {
    expect(screen.getAllByText("–").length).toBeGreaterThan(6);
    computed({
      coupling: { uniformCurrent: 0.12, atResonance: 0.142, circuit: 0.138, mutualInductance: 1e-4 },
    });
    expect(screen.getByText("0.1380")).toBeInTheDocument();
  });
});
