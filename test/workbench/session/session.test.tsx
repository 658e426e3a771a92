import { act, render, screen } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import {
  useDesign,
  useEvaluation,
  useSession,
  useShow,
  useUnitSystem,
} from "../../../src/workbench/session/hooks";
import { workbench } from "../../../src/workbench/session/session";

function Probe() {
  const tap = useDesign((design) => design.primary.tap);
  const count = useShow((show) => show.order.length);
  const { undoLabel, revision, driveRevision } = useSession((session) => session);
  const findings = useEvaluation((evaluation) => evaluation.findings.length);
  const system = useUnitSystem();
  return <p>{[tap, count, undoLabel, driveRevision === revision, findings >= 0, system].join(" | ")}</p>;
}

describe("the session of the page", () => {
  it("is followed by components, also where there are no workers", () => {
    render(<Probe />);
    act(() => workbench.setValue("primary.tap", 5.25));
    expect(screen.getByText("5.25 | 2 | Undo tap | true | true | metric")).toBeTruthy();
    act(() => workbench.undo());
    expect(screen.queryByText(/5\.25/)).toBeNull();
  });
});
