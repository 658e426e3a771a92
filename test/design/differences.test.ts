import { describe, expect, it } from "vitest";
import { withValueAt } from "../../src/design/changeAt";
import { differences } from "../../src/design/differences";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";

describe("the differences of two designs", () => {
  it("are none between equal ones, whatever their identity", () => {
    expect(differences(pierHallLeft, structuredClone(pierHallLeft))).toEqual([]);
  });

  it("name each value that differs, with both sides", () => {
    const changed = withValueAt(withValueAt(pierHallLeft, "secondary.turns", 1500), "title", "Other");
    expect(differences(pierHallLeft, changed)).toEqual([
      { path: "title", before: pierHallLeft.title, after: "Other" },
      { path: "secondary.turns", before: pierHallLeft.secondary.turns, after: 1500 },
    ]);
  });

  it("tell a part that came or went by its values alone", () => {
    const rail = { radius: 0.3, tubeDiameter: 0.01, height: 0.2 };
    const without = withValueAt(pierHallLeft, "primary.strikeRail", null);
    const withRail = withValueAt(pierHallLeft, "primary.strikeRail", rail);
    const paths = differences(without, withRail).map(({ path, before }) => [path, before]);
    expect(paths).toEqual(Object.keys(rail).map((key) => [`primary.strikeRail.${key}`, undefined]));
    expect(differences(withRail, without).map(({ after }) => after)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("are the same seen from the other side", () => {
    const there = differences(pierHallLeft, pierHallRight);
    const back = differences(pierHallRight, pierHallLeft);
    expect(there.length).toBeGreaterThan(5);
    const turned = back.map(({ path, before, after }) => ({ path, before: after, after: before }));
    const byPath = (a: { path: string }, b: { path: string }) => a.path.localeCompare(b.path);
    expect([...turned].sort(byPath)).toEqual([...there].sort(byPath));
  });
});
