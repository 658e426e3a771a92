import { describe, expect, it } from "vitest";
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
