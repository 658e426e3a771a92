import { describe, expect, it } from "vitest";
import { defaultArrangement } from "../../src/design/arrangement";
import { exampleShow, pierHallLeft } from "../../src/design/examples";
import { parseShow, type Show, serialiseShow } from "../../src/design/show";

/** A show of the left design alone, under an id. */
function showOf(id: string): Show {
  return { ...exampleShow(), designs: { [id]: pierHallLeft }, order: [id], open: id, left: id, right: null };
}

describe("a show", () => {
  it("comes back as it was written", () => {
    const show = exampleShow();
    expect(parseShow(serialiseShow(show))).toEqual({ ok: true, show });
  });

  it("may hold one design alone", () => {
    expect(parseShow(showOf("one"))).toMatchObject({ ok: true });
  });

  it("written before lanes, arrangement and score were kept opens with their defaults", () => {
    const { lanes, arrangement, score, ...older } = exampleShow();
    expect(parseShow(JSON.stringify(older))).toEqual({
      ok: true,
      show: { ...older, lanes: [], arrangement: defaultArrangement, score: null },
    });
    expect([lanes, arrangement, score]).toEqual([[], defaultArrangement, null]);
  });

  it("written before shows had names is called after its left design", () => {
    const { name: _name, ...older } = exampleShow();
    expect(parseShow(older)).toEqual({ ok: true, show: { ...exampleShow(), name: pierHallLeft.title } });
  });

  it("written before spacing, phase and line-up were kept opens with their defaults", () => {
    const { spacing: _spacing, phase: _phase, lineUp: _lineUp, ...older } = exampleShow();
    expect(parseShow(older)).toMatchObject({
      ok: true,
      show: { spacing: 2, phase: "in phase", lineUp: { candidates: [] } },
    });
  });

  it.each([
    ["arrangement.voices", { arrangement: { ...defaultArrangement, voices: 17 } }],
    ["arrangement.kneeRate", { arrangement: { ...defaultArrangement, kneeRate: 0 } }],
    ["lanes.0.level", { lanes: [{ part: "0:1", coil: "left", transpose: 0, level: 2 }] }],
    ["lanes.0.transpose", { lanes: [{ part: "0:1", coil: "left", transpose: 0.5, level: 1 }] }],
  ])("is refused where %s has no meaning", (path, change) => {
    expect(parseShow({ ...exampleShow(), ...change })).toMatchObject({ ok: false, faults: [{ path }] });
  });

  it("is refused where it names a design that is not in it", () => {
    const parsed = parseShow({ ...exampleShow(), open: "third" });
    expect(parsed).toMatchObject({
      ok: false,
      faults: [{ path: "open", message: 'open is "third": it must name a design of this show.' }],
    });
  });

  it("is refused where it holds more designs than are read, and looks into none of them", () => {
    const many = Object.fromEntries(Array.from({ length: 50_000 }, (_, index) => [`d${index}`, {}]));
    const parsed = parseShow(JSON.stringify({ ...exampleShow(), designs: many }));
    expect(parsed.ok || parsed.faults[0].message).toBe(
      "designs is an object: it must hold at most 200 designs.",
    );
    expect(parsed.ok || parsed.faults.some(({ path }) => path.startsWith("designs.d"))).toBe(false);
  });

  it("takes ids that objects have by birth as it takes any other", () => {
    const show = showOf("constructor");
    expect(parseShow(serialiseShow(show))).toEqual({ ok: true, show });
    const absent = { ...exampleShow(), open: "toString", left: "__proto__" };
    expect(parseShow(absent)).toMatchObject({ faults: [{ path: "open" }, { path: "left" }] });
    const born = serialiseShow(exampleShow()).replace(
      '"left": {',
      '"__proto__": { "polluted": 1 }, "left": {',
    );
    parseShow(born);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it("is refused with the path of the fault inside a design", () => {
    const show = exampleShow();
    const broken = {
      ...show,
      designs: {
        ...show.designs,
        left: { ...pierHallLeft, primary: { ...pierHallLeft.primary, pitch: -1 } },
      },
    };
    expect(parseShow(broken)).toMatchObject({ ok: false, faults: [{ path: "designs.left.primary.pitch" }] });
  });
});
