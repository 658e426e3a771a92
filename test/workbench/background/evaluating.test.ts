import fc from "fast-check";
import { describe, expect, it, vi } from "vitest";
import { NO_STRESS } from "../../../src/evaluation/bank/bankResults";
import { findingMessage } from "../../../src/evaluation/findings/findingMessage";
import { fieldAt } from "../../../src/fields/allFields";
import type { EvaluatorReply } from "../../../src/workbench/background/evaluator";
import { finiteDrive, finiteField, isFiniteThroughout } from "../../../src/workbench/background/finiteGroups";
import { runs } from "../../properties";
import { EMPTY_DRIVE, fieldWith, newBench, troubleOf } from "../fakes";

function fieldReply(revision: number): EvaluatorReply {
  return { group: "field", revision, field: fieldWith(revision) };
}

function driveReply(revision: number): EvaluatorReply {
  const { tank } = fieldWith(revision);
  return { group: "drive", revision, drive: { ...EMPTY_DRIVE, tank: tank && { ...NO_STRESS, ...tank } } };
}

describe("the evaluation of a session", () => {
  it("is asked for at the start and at each change of the open design", () => {
    const bench = newBench();
    bench.actions.setValue("primary.tap", 5);
    bench.actions.undo();
    expect(bench.evaluator.requests.map(({ revision }) => revision)).toEqual([1, 2, 3]);
    expect(bench.evaluator.requests[1].design.primary.tap).toBe(5);
  });

  it("is not asked for when only the show changes", () => {
    const bench = newBench();
    bench.actions.editShow("move apart", (show) => ({ ...show, spacing: 7 }));
    bench.actions.renameDesign("right", "Other");
    expect(bench.evaluator.requests).toHaveLength(1);
  });

  it("comes in two groups, and is done with the second", () => {
    const bench = newBench();
    bench.evaluator.tell(fieldReply(1));
    expect(bench.state()).toMatchObject({ fieldRevision: 1, driveRevision: 0, evaluating: true });
    bench.evaluator.tell(driveReply(1));
    expect(bench.state()).toMatchObject({ fieldRevision: 1, driveRevision: 1, evaluating: false });
    expect(bench.state().evaluation.tank?.capacitance).toBe(1);
  });

  it("keeps the bank's stress until the second group brings the new one", () => {
    const bench = newBench();
    const { tank } = fieldWith(1);
    const stressed = { ...EMPTY_DRIVE, tank: tank && { ...NO_STRESS, ...tank, unitPeakVoltage: 800 } };
    bench.evaluator.tell(fieldReply(1));
    bench.evaluator.tell({ group: "drive", revision: 1, drive: stressed });
    bench.actions.setValue("primary.tap", 5);
    bench.evaluator.tell(fieldReply(2));
    expect(bench.state().evaluation.tank).toMatchObject({ capacitance: 2, unitPeakVoltage: 800 });
  });

  it("never goes back, in whatever order the replies come", () => {
    const order = fc.shuffledSubarray([1, 2, 3, 4, 5, 6, 7, 8], { minLength: 1 });
    fc.assert(
      fc.property(order, (revisions) => {
        const bench = newBench();
        for (let tap = 1; tap < 8; tap++) bench.actions.setValue("primary.tap", tap);
        let newest = 0;
        for (const revision of revisions) {
          newest = Math.max(newest, revision);
          bench.evaluator.tell(fieldReply(revision));
          bench.evaluator.tell(driveReply(revision));
          expect(bench.state().evaluation.tank?.capacitance).toBe(newest);
          expect(bench.state()).toMatchObject({ fieldRevision: newest, driveRevision: newest });
        }
      }),
      runs(50),
    );
  });

  it("of another design is dropped when that one comes too late", () => {
    const bench = newBench();
    bench.evaluator.tell(fieldReply(1));
    bench.actions.setValue("primary.tap", 5);
    bench.actions.openDesign("right");
    expect(bench.state().evaluation.tank).toBeNull();
    bench.evaluator.tell(fieldReply(2));
    bench.evaluator.tell(driveReply(2));
    expect(bench.state().evaluation.tank).toBeNull();
    bench.evaluator.tell(fieldReply(3));
    expect(bench.state().evaluation.tank?.capacitance).toBe(3);
  });

  it("that fails leaves no old figures, a finding and a notice, and the next one clears both", () => {
    const bench = newBench();
    bench.evaluator.tell(fieldReply(1));
    bench.evaluator.tell({ group: "failure", revision: 1, trouble: troubleOf() });
    expect(bench.state()).toMatchObject({ evaluating: false, evaluation: { tank: null } });
    expect(bench.state().evaluation.findings).toMatchObject([
      { severity: "error", code: "evaluation-failed" },
    ]);
    expect(bench.state().notices[0].sentence).toMatch(/^The evaluation of the design failed\./);
    bench.actions.setValue("primary.tap", 5);
    bench.evaluator.tell(fieldReply(2));
    bench.evaluator.tell(driveReply(2));
    expect(bench.state()).toMatchObject({ notices: [], evaluation: { findings: [] } });
  });

  it("that fails names the edit and its field, and takes it back when asked to", () => {
    const bench = newBench();
    bench.evaluator.tell(fieldReply(1));
    bench.evaluator.tell(driveReply(1));
    bench.actions.setValue("secondary.turns", 1e-30, "change turns");
    const resume = vi.fn();
    const trouble = troubleOf({ failure: "silent", resume });
    bench.evaluator.tell({ group: "failure", revision: 2, trouble });
    const [notice] = bench.state().notices;
    expect(notice.sentence).toMatch(/did not respond for 10 s.*“change turns”/);
    const [finding] = bench.state().evaluation.findings;
    expect(finding.where).toBe("secondary.turns");
    expect(findingMessage(finding, "metric")).toMatch(
      /^The design could not be evaluated; the last field changed was turns\./,
    );
    bench.actions.takeWayOut(notice.id, "take back the last change");
    expect(bench.open().secondary.turns).not.toBe(1e-30);
    expect(resume).toHaveBeenCalled();
    expect(bench.state().notices).toEqual([]);
    expect(bench.evaluator.requests.at(-1)).toMatchObject({ revision: 3 });
  });

  it("that fails can be asked for again, and its result is then shown", () => {
    const bench = newBench();
    bench.evaluator.tell({ group: "failure", revision: 1, trouble: troubleOf({ failure: "died" }) });
    const [notice] = bench.state().notices;
    expect(notice.waysOut).toEqual(["compute again", "dismiss"]);
    bench.actions.takeWayOut(notice.id, "compute again");
    expect(bench.evaluator.requests.at(-1)).toMatchObject({ revision: 2 });
    bench.evaluator.tell(fieldReply(2));
    expect(bench.state().evaluation.tank?.capacitance).toBe(2);
  });

  it("that fails of an earlier edit leaves the figures of the newer one", () => {
    const bench = newBench();
    bench.actions.setValue("primary.tap", 5);
    bench.evaluator.tell(fieldReply(2));
    bench.evaluator.tell({ group: "failure", revision: 1, trouble: troubleOf() });
    expect(bench.state().evaluation.tank?.capacitance).toBe(2);
    expect(bench.state().evaluating).toBe(true);
  });
});

describe("the guard against what is not finite", () => {
  it.each(Object.keys({ ...fieldWith(1), ...EMPTY_DRIVE }).filter((name) => name !== "findings"))(
    "has a sentence and a field to look at for the group %s",
    (name) => {
      const broken = { [name]: { number: Number.NaN } };
      const [finding] = finiteDrive({ ...fieldWith(1), ...broken }, { ...EMPTY_DRIVE, ...broken }).findings;
      expect(findingMessage(finding, "metric")).toMatch(/^.+ could not be computed .+\.$/);
      expect(fieldAt(finding.where)).not.toBeNull();
    },
  );
  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "drops a group with %s",
    (value) => {
      const field = finiteField(fieldWith(value));
      expect(field.tank).toBeNull();
      const { findings } = finiteDrive(fieldWith(value), EMPTY_DRIVE);
      expect(findings).toMatchObject([
        { severity: "error", code: "result-not-finite", where: "tank.unit.capacitance", value: null },
      ]);
    },
  );

  it("leaves nothing that is not finite anywhere, and all that is", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (value, limit) => {
        const finding = {
          severity: "note" as const,
          sentence: "{field} is {value}.",
          code: "x",
          where: "a",
          quantity: "a",
          value,
          limit,
          remedy: "b",
        };
        const drive = finiteDrive(fieldWith(value), { ...EMPTY_DRIVE, findings: [finding] });
        expect(isFiniteThroughout([finiteField(fieldWith(value)), drive])).toBe(true);
        if (Number.isFinite(value)) expect(finiteField(fieldWith(value))).toEqual(fieldWith(value));
      }),
    );
  });
});
