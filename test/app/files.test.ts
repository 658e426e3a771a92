import { beforeEach, describe, expect, it } from "vitest";
import { saveNetlist } from "../../src/app/files";
import { session, workbench } from "../../src/workbench/session/session";

beforeEach(() => {
  workbench.resetToExamples();
});

describe("a netlist", () => {
  it.each(["response", "burst"] as const)(
    "of a design without a solution is refused in a notice: %s",
    (kind) => {
      workbench.setValue("secondary.windingLength", 0.1);
      saveNetlist(session.store.getState().history.present.open, kind);
      const { notices } = session.store.getState();
      expect(notices.find(({ id }) => id === "no-netlist")?.sentence).toMatch(
        /has no solution; see the findings/,
      );
    },
  );
});
