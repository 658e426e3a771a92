import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Design } from "../../../src/design/design";
import { RUN_PAUSE } from "../../../src/workbench/session/editing";
import { HISTORY_DEPTH } from "../../../src/workbench/session/history";
import { sessionView } from "../../../src/workbench/session/sessionView";
import { runs } from "../../properties";
import { MemoryStorage, newBench } from "../fakes";

function withTap(tap: number): (design: Design) => Design {
  return (design) => ({ ...design, primary: { ...design.primary, tap } });
}

describe("a gesture", () => {
  it("is one step however often it changes", () => {
    const bench = newBench();
    const before = bench.open().primary.tap;
    bench.actions.begin("move tap");
    for (const tap of [6.3, 6.4, 6.5]) bench.actions.change(withTap(tap));
    bench.actions.commit();
    expect(bench.open().primary.tap).toBe(6.5);
    expect(sessionView(bench.state()).undoLabel).toBe("Undo move tap");
    bench.actions.undo();
    expect(bench.open().primary.tap).toBe(before);
    expect(sessionView(bench.state())).toMatchObject({ canUndo: false, redoLabel: "Redo move tap" });
    bench.actions.redo();
    expect(bench.open().primary.tap).toBe(6.5);
  });

  it("leaves no step and the redo steps alone when it changes nothing", () => {
    const bench = newBench();
    const { tap } = bench.open().primary;
    bench.actions.setValue("primary.tap", 5);
    bench.actions.undo();
    bench.actions.begin("move tap");
    bench.actions.change(withTap(7));
    bench.actions.change(withTap(tap));
    bench.actions.commit();
    expect(sessionView(bench.state())).toMatchObject({ canUndo: false, canRedo: true });
  });

  it("that is cancelled restores what was there, and the moves that still come are ignored", () => {
    const bench = newBench();
    const before = bench.show();
    bench.actions.begin("move tap");
    bench.actions.change(withTap(7));
    bench.actions.cancel();
    bench.actions.change(withTap(7.5));
    bench.actions.commit();
    expect(bench.show()).toBe(before);
    expect(sessionView(bench.state())).toMatchObject({ canUndo: false, gesture: null });
  });

  it("is restored by undo while it runs", () => {
    const bench = newBench();
    const before = bench.show();
    bench.actions.begin("move tap");
    bench.actions.change(withTap(7));
    bench.actions.undo();
    expect(bench.show()).toBe(before);
  });

  it("that begins before the last one ended commits that one", () => {
    const bench = newBench();
    bench.actions.begin("move tap");
    bench.actions.change(withTap(7));
    bench.actions.begin("move tap again");
    bench.actions.change(withTap(7.5));
    bench.actions.commit();
    bench.actions.undo();
    expect(bench.open().primary.tap).toBe(7);
  });

  it("keeps the last value that has a meaning", () => {
    const bench = newBench();
    bench.actions.begin("move tap");
    bench.actions.change(withTap(7));
    bench.actions.change(withTap(Number.NaN));
    bench.actions.commit();
    expect(bench.open().primary.tap).toBe(7);
  });
});

describe("a typed value", () => {
  it("is one step, named by its field", () => {
    const bench = newBench();
    bench.actions.setValue("secondary.turns", 1500);
    expect(bench.open().secondary.turns).toBe(1500);
    expect(sessionView(bench.state()).undoLabel).toMatch(/^Undo .*turns/i);
  });

  it("that the design has already is no step", () => {
    const bench = newBench();
    bench.actions.setValue("secondary.turns", bench.open().secondary.turns);
    expect(sessionView(bench.state()).canUndo).toBe(false);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1, 0])(
    "of %s turns is refused with a sentence",
    (turns) => {
      const bench = newBench();
      const before = bench.show();
      bench.actions.setValue("secondary.turns", turns);
      expect(bench.show()).toBe(before);
      expect(bench.state().notices[0].details.join()).toContain("secondary.turns");
      bench.actions.setValue("secondary.turns", 1500);
      expect(bench.state().notices).toEqual([]);
    },
  );

  it("outside its range is taken, for a finding to judge", () => {
    const bench = newBench();
    bench.actions.setValue("primary.tap", 99);
    expect(bench.open().primary.tap).toBe(99);
  });
});

describe("small steps of one run", () => {
  const clock = { ms: 0 };
  const bench = () => newBench(new MemoryStorage(), () => new Date(clock.ms));
  const tapTo = (to: ReturnType<typeof bench>, tap: number) => {
    clock.ms += 300;
    to.actions.setValue("primary.tap", tap, undefined, "tap");
  };
  const steps = (of: ReturnType<typeof bench>) => of.state().history.past.length;

  it("that follow one another within a second are one step of undo", () => {
    const stepped = bench();
    const before = stepped.open().primary.tap;
    for (const tap of [5, 5.1, 5.2, 5.3, 5.4]) tapTo(stepped, tap);
    expect(steps(stepped)).toBe(1);
    stepped.actions.undo();
    expect(stepped.open().primary.tap).toBe(before);
    stepped.actions.redo();
    expect(stepped.open().primary.tap).toBe(5.4);
  });

  it("are a step of their own after a second's rest, an undo, another edit, or in another field", () => {
    const stepped = bench();
    tapTo(stepped, 5);
    clock.ms += RUN_PAUSE;
    tapTo(stepped, 5.1);
    expect(steps(stepped)).toBe(2);
    stepped.actions.setValue("primary.tap", 5.2);
    tapTo(stepped, 5.3);
    expect(steps(stepped)).toBe(4);
    stepped.actions.undo();
    tapTo(stepped, 5.4);
    expect(steps(stepped)).toBe(4);
    stepped.actions.setValue("secondary.turns", 1500, undefined, "turns");
    expect(steps(stepped)).toBe(5);
    stepped.actions.openDesign("right");
    stepped.actions.setValue("secondary.turns", 1501, undefined, "turns");
    expect(steps(stepped)).toBe(6);
  });

  it("that lead back to where they began leave no step, and do not lengthen the one before", () => {
    const stepped = bench();
    stepped.actions.setValue("secondary.turns", 1500);
    const { tap } = stepped.open().primary;
    for (const next of [5, tap, 5.1]) tapTo(stepped, next);
    expect(steps(stepped)).toBe(2);
    stepped.actions.undo();
    expect(stepped.open()).toMatchObject({ primary: { tap }, secondary: { turns: 1500 } });
  });

  it("may be gestures, as of a key held on a handle", () => {
    const stepped = bench();
    for (const tap of [5, 5.1]) {
      stepped.actions.begin("move tap");
      stepped.actions.change(withTap(tap));
      stepped.actions.commit("tap");
    }
    expect(steps(stepped)).toBe(1);
  });

  it("are taken back as one however they are mixed with others", () => {
    const edit = fc.record({
      run: fc.constantFrom("a", "b", undefined),
      tap: fc.integer({ min: 1, max: 5 }),
      pause: fc.constantFrom(10, 2 * RUN_PAUSE),
    });
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 12 }), (edits) => {
        const stepped = bench();
        const first = stepped.show();
        for (const { run, tap, pause } of edits) {
          clock.ms += pause;
          stepped.actions.setValue("primary.tap", tap, undefined, run);
        }
        const last = stepped.show();
        const made = steps(stepped);
        for (let step = 0; step < made; step++) stepped.actions.undo();
        expect(stepped.show()).toEqual(first);
        for (let step = 0; step < made; step++) stepped.actions.redo();
        expect(stepped.show()).toEqual(last);
      }),
      runs(30),
    );
  });
});

describe("undo and redo", () => {
  it("are each other's inverse over any run of edits", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0.1, max: 20, noNaN: true }), { maxLength: 20 }), (taps) => {
        const bench = newBench();
        const first = bench.show();
        for (const tap of taps) bench.actions.setValue("primary.tap", tap);
        const last = bench.show();
        for (const _ of taps) bench.actions.undo();
        expect(bench.show()).toEqual(first);
        for (const _ of taps) bench.actions.redo();
        expect(bench.show()).toEqual(last);
      }),
      runs(30),
    );
  });

  it("remember a limited number of steps", () => {
    const bench = newBench();
    for (let step = 0; step < HISTORY_DEPTH + 5; step++)
      bench.actions.setValue("primary.tap", 1 + step / 100);
    expect(bench.state().history.past).toHaveLength(HISTORY_DEPTH);
  });

  it("go back to the design that the step was about", () => {
    const bench = newBench();
    bench.actions.setValue("primary.tap", 5);
    bench.actions.openDesign("right");
    expect(sessionView(bench.state()).canUndo).toBe(true);
    bench.actions.undo();
    expect(bench.show().open).toBe("left");
  });

  it("cover the show too", () => {
    const bench = newBench();
    const { spacing } = bench.show();
    bench.actions.editShow("move coils apart", (show) => ({ ...show, spacing: spacing + 1 }));
    bench.actions.undo();
    expect(bench.show().spacing).toBe(spacing);
  });

  it("forget what was taken back once something else is done", () => {
    const bench = newBench();
    bench.actions.setValue("primary.tap", 5);
    bench.actions.undo();
    bench.actions.setValue("primary.tap", 5.5);
    expect(sessionView(bench.state()).canRedo).toBe(false);
  });
});
