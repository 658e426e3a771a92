import { describe, expect, it } from "vitest";
import { defaultArrangement } from "../../src/design/arrangement";
import { exampleShow, pierHallLeft } from "../../src/design/examples";
import { parseShow, serialiseShow, showOf } from "../../src/design/show";

describe("a show", () => {
  it("comes back as it was written", () => {
    const show = exampleShow();
    expect(parseShow(serialiseShow(show))).toEqual({ ok: true, show });
  });

  it("may hold one design alone", () => {
    expect(parseShow(showOf("one", pierHallLeft))).toMatchObject({ ok: true });
  });

  it("written before lanes, arrangement and score were kept opens with their defaults", () => {
    const { lanes, arrangement, score, ...older } = exampleShow();
    expect(parseShow(JSON.stringify(older))).toEqual({
      ok: true,
      show: { ...older, lanes: [], arrangement: defaultArrangement, score: null },
    });
    expect([lanes, arrangement, score]).toEqual([[], defaultArrangement, null]);
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
