import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withValueAt } from "../../../src/design/changeAt";
import { exampleShow, pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { allFields } from "../../../src/fields/allFields";
import { comparedShow, designRows } from "../../../src/panels/versions/comparedRows";
import { runs } from "../../properties";

const plain = (text: string) => text.replace(/[\u202f\u2009]/g, " ");

describe("a version compared with the present design", () => {
  it("tells a field by its own label, with both values in the reader's units", () => {
    const longer = withValueAt(pierHallLeft, "secondary.windingLength", 0.5);
    const [metric] = designRows(pierHallLeft, longer, "metric");
    expect(metric).toMatchObject({ section: "Secondary", label: "Winding length" });
    expect(plain(metric.present)).toBe("500 mm");
    const [inch] = designRows(pierHallLeft, longer, "inch");
    expect(plain(inch.present)).toBe("19.68504 in");
  });

  it("shows as many digits as tell the two values apart", () => {
    const [row] = designRows(
      pierHallLeft,
      withValueAt(pierHallLeft, "primary.tap", pierHallLeft.primary.tap + 1e-9),
      "metric",
    );
    expect(row.old).not.toBe(row.present);
  });

  it("says none where a part is absent, and on or off of a switch", () => {
    const rows = designRows(
      pierHallRight,
      withValueAt(
        withValueAt(pierHallRight, "primary.strikeRail", null),
        "room.ceilingConducts",
        !pierHallRight.room.ceilingConducts,
      ),
      "metric",
    );
    expect(rows.filter(({ section }) => section === "Strike rail").map(({ present }) => present)).toEqual([
      "none",
      "none",
      "none",
    ]);
    const ceiling = rows.find(({ label }) => label === "Ceiling conducts");
    expect([ceiling?.old, ceiling?.present].sort()).toEqual(["off", "on"]);
  });

  it("has a section for every field, and words for any number", () => {
    const numbers = allFields.filter(({ kind, path }) => kind === "number" && !path.includes("*"));
    fc.assert(
      fc.property(
        fc.constantFrom(...numbers),
        fc.double({ noNaN: true, min: -1e300, max: 1e300 }),
        ({ path }, value) => {
          const [row] = designRows(withValueAt(pierHallLeft, path, value), pierHallLeft, "metric");
          if (!row) return;
          expect(row.section).not.toBe("");
          expect(row.old).not.toMatch(/NaN|undefined|Infinity|object/);
        },
      ),
      runs(200),
    );
  });
});

describe("a version compared with the present show", () => {
  const show = exampleShow();

  it("has nothing to tell of an equal one, whichever design is open", () => {
    expect(comparedShow(show, { ...structuredClone(show), open: "right" }, "metric")).toEqual({
      designs: [],
      rows: [],
    });
  });

  it("says which designs came, went and differ", () => {
    const { left, right } = show.designs;
    const then = { ...show, designs: { left, gone: right }, order: ["left", "gone"], right: "gone" };
    const now = {
      ...show,
      designs: { left: { ...left, title: "Renamed" }, right },
      spacing: show.spacing + 1,
      lanes: [{ part: "1", coil: "both" as const, transpose: 0, level: 1 }],
    };
    const { designs, rows } = comparedShow(then, now, "metric");
    expect(designs.map(({ id, state }) => [id, state])).toEqual([
      ["left", "differs"],
      ["gone", "only then"],
      ["right", "only now"],
    ]);
    expect(designs[0].rows.map(({ label, present }) => [label, present])).toEqual([["Title", "Renamed"]]);
    expect(rows.map(({ label }) => label)).toEqual(
      ["Left coil", "Right coil", "Lanes of the score", "Spacing of the coils"].slice(1),
    );
    expect(rows[1]).toMatchObject({ old: "none", present: "1" });
  });
});
