import { describe, expect, it } from "vitest";
import { exampleShow } from "../../../src/design/examples";
import { newBench } from "../fakes";

describe("the designs of a show", () => {
  it("begin with the example", () => {
    expect(newBench().show()).toEqual(exampleShow());
  });

  it("are added, opened and named apart", () => {
    const bench = newBench();
    bench.actions.newDesign();
    bench.actions.newDesign();
    const titles = bench.show().order.map((id) => bench.show().designs[id].title);
    expect(new Set(titles).size).toBe(4);
    expect(bench.show().open).toBe(bench.show().order[3]);
  });

  it("are duplicated under a title of their own", () => {
    const bench = newBench();
    bench.actions.duplicateDesign("left");
    const { title: original } = bench.show().designs.left;
    expect(bench.open()).toEqual({ ...bench.show().designs.left, title: `${original}, copy` });
  });

  it("are renamed in one step", () => {
    const bench = newBench();
    bench.actions.renameDesign("right", "North pier");
    expect(bench.show().designs.right.title).toBe("North pier");
    bench.actions.undo();
    expect(bench.show()).toEqual(exampleShow());
  });

  it("are deleted, and the neighbour takes the place", () => {
    const bench = newBench();
    bench.actions.deleteDesign("left");
    expect(bench.show()).toMatchObject({ order: ["right"], open: "right", left: "right", right: null });
    bench.actions.undo();
    expect(bench.show()).toEqual(exampleShow());
  });

  it("are never none: the last one deleted leaves a starting design, and comes back by undo", () => {
    const bench = newBench();
    bench.actions.deleteDesign("left");
    const last = bench.show();
    bench.actions.deleteDesign("right");
    expect(bench.show().order).toHaveLength(1);
    expect(bench.open().title).toBe("New design");
    bench.actions.undo();
    expect(bench.show()).toEqual(last);
  });

  it("stay as they are when an unknown one is named", () => {
    const bench = newBench();
    const before = bench.show();
    bench.actions.deleteDesign("nowhere");
    bench.actions.openDesign("nowhere");
    bench.actions.duplicateDesign("nowhere");
    bench.actions.renameDesign("nowhere", "x");
    expect(bench.show()).toBe(before);
  });

  it("take a top load from the line-up", () => {
    const bench = newBench();
    const { topLoad } = bench.show().designs.right;
    bench.actions.adoptTopLoad(topLoad);
    expect(bench.open().topLoad).toEqual(topLoad);
    bench.actions.undo();
    expect(bench.show()).toEqual(exampleShow());
  });

  it("give way to the example, and come back", () => {
    const bench = newBench();
    bench.actions.newDesign();
    const before = bench.show();
    bench.actions.resetToExamples();
    expect(bench.show()).toEqual(exampleShow());
    bench.actions.undo();
    expect(bench.show()).toEqual(before);
  });
});

describe("files", () => {
  it("bring a design back as it was", () => {
    const bench = newBench();
    bench.actions.setValue("primary.tap", 6.123456789);
    const { text, fileName } = bench.actions.exportDesign("left");
    const other = newBench();
    expect(other.actions.importText(text, fileName)).toEqual({ ok: true });
    expect({ ...other.open(), title: "" }).toEqual({ ...bench.open(), title: "" });
    expect(other.show().order).toHaveLength(3);
  });

  it("bring a show back as it was, in one step", () => {
    const bench = newBench();
    bench.actions.newDesign();
    const { text, fileName } = bench.actions.exportShow();
    const other = newBench();
    const outcome = other.actions.importText(text, fileName);
    expect(outcome).toEqual({ ok: true, show: bench.show(), scoreFile: null });
    expect(other.show()).toEqual(exampleShow());
    other.actions.replaceShow("open it", bench.show());
    expect(other.show()).toEqual(bench.show());
    other.actions.undo();
    expect(other.show()).toEqual(exampleShow());
  });

  it("of a show are named after it, and the name is a step like any other", () => {
    const bench = newBench();
    bench.actions.renameShow("Autumn tour / 2");
    expect(bench.show().name).toBe("Autumn tour / 2");
    expect(bench.actions.exportShow().fileName).toBe("autumn-tour-2.coilwright-show.json");
    bench.actions.undo();
    expect(bench.actions.exportShow().fileName).toBe("the-pier-hall-pair.coilwright-show.json");
  });

  it("bring the designs of a show beside those that are there, with titles of their own", () => {
    const bench = newBench();
    const coming = { ...exampleShow(), spacing: 9 };
    bench.actions.addDesignsOf("add", coming);
    const { order, designs, open, spacing } = bench.show();
    expect(order.map((id) => designs[id].title)).toEqual([
      "Pier hall, left coil",
      "Pier hall, right coil",
      "Pier hall, left coil 2",
      "Pier hall, right coil 2",
    ]);
    expect(open).toBe(order[2]);
    expect(spacing).toBe(exampleShow().spacing);
    bench.actions.undo();
    expect(bench.show()).toEqual(exampleShow());
  });

  const design = () => JSON.parse(newBench().actions.exportDesign("left").text) as Record<string, unknown>;
  it.each([
    ["no JSON", "{ half"],
    ["an empty file", ""],
    ["a list", "[]"],
    ["another format", JSON.stringify({ format: "something" })],
    ["a newer version", JSON.stringify({ ...design(), version: 99 })],
    ["no version", JSON.stringify({ ...design(), version: undefined })],
    ["an unknown key", JSON.stringify({ ...design(), surprise: 1 })],
    ["a part missing", JSON.stringify({ ...design(), tank: undefined })],
    ["a length of zero", JSON.stringify({ ...design(), room: { ceilingHeight: 0 } })],
    ["a number that became null", JSON.stringify({ ...design(), spark: { length: null } })],
  ])("with %s are refused with a sentence and leave everything untouched", (_what, text) => {
    const bench = newBench();
    const before = bench.state();
    const outcome = bench.actions.importText(text, "coil.json");
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) for (const fault of outcome.faults) expect(fault.message).toMatch(/^coil\.json: .+\.$/);
    expect(bench.state()).toBe(before);
  });

  it("are not made of a design that does not exist", () => {
    expect(() => newBench().actions.exportDesign("nowhere")).toThrow("nowhere");
  });
});
