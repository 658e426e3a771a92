// @vitest-environment node

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { firstHalf, overBudget, thinnedOut } from "../../../src/workbench/keeping/thinning";
import type { VersionSummary } from "../../../src/workbench/keeping/version";
import { runs } from "../../properties";

const NOW = Date.parse("2026-11-20T12:00:00Z");
const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

function summary(age: number, changes: Partial<VersionSummary> = {}): VersionSummary {
  return {
    id: `age ${age}`,
    kind: "design",
    designId: "left",
    title: "Coil",
    at: new Date(NOW - age).toISOString(),
    cause: "during editing",
    binned: false,
    periodic: true,
    offered: false,
    size: 100,
    ...changes,
  };
}

function every(step: number, until: number): VersionSummary[] {
  return Array.from({ length: Math.floor(until / step) }, (_, index) => summary(index * step));
}

function kept(all: readonly VersionSummary[], gone: readonly string[]): VersionSummary[] {
  const ids = new Set(gone);
  return all.filter(({ id }) => !ids.has(id));
}

describe("versions thinned with age", () => {
  it("keep all of the last hour, then one an hour for a day, one a day for a month, one a week after", () => {
    const all = every(10 * MINUTE, 120 * DAY);
    const left = kept(all, thinnedOut(all, NOW)).map(({ at }) => NOW - Date.parse(at));
    const between = (from: number, to: number) => left.filter((age) => age >= from && age < to).length;
    expect(between(0, 60 * MINUTE)).toBe(6);
    expect(between(60 * MINUTE, DAY)).toBeOneOf([23, 24]);
    expect(between(DAY, 31 * DAY)).toBeOneOf([30, 31]);
    expect(between(31 * DAY, 120 * DAY)).toBeOneOf([12, 13, 14]);
  });

  it("keep the newest of each span, and thinning again takes nothing more", () => {
    const all = every(7 * MINUTE, 3 * DAY);
    const left = kept(all, thinnedOut(all, NOW));
    expect(thinnedOut(left, NOW)).toEqual([]);
  });

  it("leave what lies in the bin, what is offered, and other designs alone", () => {
    const age = 40 * DAY;
    const all = [
      summary(age, { id: "a" }),
      summary(age + 1, { id: "bin", binned: true }),
      summary(age + 2, { id: "offer", offered: true }),
      summary(age + 3, { id: "other", designId: "right" }),
    ];
    expect(thinnedOut(all, NOW)).toEqual([]);
  });

  it("keep for a month what was kept for a reason", () => {
    const reasoned = (age: number, id: string) => summary(age, { id, periodic: false });
    expect(thinnedOut([reasoned(2 * DAY, "a"), reasoned(2 * DAY + 1, "b")], NOW)).toEqual([]);
    expect(thinnedOut([reasoned(40 * DAY, "a"), reasoned(40 * DAY + 1, "b")], NOW)).toEqual(["b"]);
  });
});

describe("versions over their budget", () => {
  const anySummary = fc
    .record({
      age: fc.nat({ max: 1e9 }),
      size: fc.integer({ min: 1, max: 5000 }),
      binned: fc.boolean(),
      periodic: fc.boolean(),
    })
    .map(({ age, ...changes }) => summary(age, changes));
  const anyList = fc
    .array(anySummary, { maxLength: 40 })
    .map((list) => list.map((each, index) => ({ ...each, id: `${index}` })));
  const room = (list: readonly VersionSummary[]) => list.reduce((sum, { size }) => sum + size, 0);

  it("come within it, and no more go than must", () => {
    fc.assert(
      fc.property(anyList, fc.nat({ max: 50_000 }), (all, budget) => {
        const gone = overBudget(all, budget);
        expect(room(kept(all, gone))).toBeLessThanOrEqual(budget);
        if (gone.length > 0) expect(room(kept(all, gone.slice(0, -1)))).toBeGreaterThan(budget);
      }),
      runs(100, 3),
    );
  });

  it("go oldest first, and the bin last", () => {
    const all = [
      summary(3, { id: "old", size: 10 }),
      summary(9, { id: "bin", binned: true, size: 10 }),
      summary(1, { id: "new", size: 10 }),
    ];
    expect(overBudget(all, 25)).toEqual(["old"]);
    expect(overBudget(all, 10)).toEqual(["old", "new"]);
  });

  it("always give something where the browser is full and there is something", () => {
    fc.assert(
      fc.property(anyList, (all) => {
        expect(firstHalf(all).length > 0).toBe(all.length > 0);
      }),
      runs(100, 3),
    );
  });
});
