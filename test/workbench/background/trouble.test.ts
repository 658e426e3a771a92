import { describe, expect, it, vi } from "vitest";
import { patience } from "../../../src/workbench/background/patience";
import { lastEditOf, reportTo, troubleNotice } from "../../../src/workbench/background/trouble";
import { newBench, troubleOf } from "../fakes";

describe("the notice of a trouble", () => {
  it.each([
    [
      { failure: "threw" },
      /^The evaluation of the design failed; the last change before it was “move tap”\. Undo that change, or change another field\.$/,
    ],
    [
      { failure: "died" },
      /^The evaluation of the design stopped unexpectedly; .* The next change restarts it\.$/,
    ],
    [
      { failure: "silent" },
      /did not respond for 10 s and was stopped; .* Undo that change, or wait longer\.$/,
    ],
    [
      { failure: "not started" },
      /^The evaluation of the design could not start, because this browser does not let the page run workers\. Editing and saving still work; use another browser, or allow workers, to compute\.$/,
    ],
    [{ failure: "cancelled" }, /was cancelled/],
    [
      { failure: "died", stopped: true },
      /failed three times in a row and will not restart by itself\. Undo that change, or compute it again\.$/,
    ],
  ] as const)("says what was computed, after which edit, and what to do: %o", (parts, sentence) => {
    expect(troubleNotice(troubleOf({ lastEdit: "move tap", ...parts })).sentence).toMatch(sentence);
  });

  it("offers to undo only if there is a change to undo", () => {
    expect(troubleNotice(troubleOf({ lastEdit: "move tap" })).waysOut).toContain("take back the last change");
    const first = troubleNotice(troubleOf());
    expect(first.waysOut).not.toContain("take back the last change");
    expect(first.sentence).not.toMatch(/null|undefined/);
  });

  it("lets everything take longer on a slow device, and computes again", () => {
    const again = vi.fn();
    const before = patience();
    const notice = troubleNotice(troubleOf({ failure: "silent", again }));
    expect(notice.waysOut).toContain("wait longer");
    notice.acts?.["wait longer"]?.();
    expect(patience()).toBe(3 * before);
    expect(again).toHaveBeenCalled();
    for (let press = 0; press < 20; press++) notice.acts?.["wait longer"]?.();
    expect(patience()).toBeLessThan(1000);
  });
});

describe("what a session is told", () => {
  it("is one notice for each computation, and none once that has a result", () => {
    const bench = newBench();
    const report = reportTo(bench.store);
    report("the pair", troubleOf({ what: "the pair" }));
    report("the sweep", troubleOf({ what: "the sweep" }));
    report("the pair", troubleOf({ what: "the pair", failure: "silent" }));
    expect(bench.state().notices.map(({ id }) => id)).toEqual(["the sweep", "the pair"]);
    report("the pair", null);
    expect(bench.state().notices.map(({ id }) => id)).toEqual(["the sweep"]);
  });

  it("names the gesture that runs, else the last edit, else nothing", () => {
    const bench = newBench();
    expect(lastEditOf(bench.state())).toBeNull();
    bench.actions.setValue("primary.tap", 5, "move tap");
    expect(lastEditOf(bench.state())).toBe("move tap");
    bench.actions.begin("drag toroid");
    expect(lastEditOf(bench.state())).toBe("drag toroid");
  });
});
