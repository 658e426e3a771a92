/** The drawing of designs with sizes that nothing has. */
import { render } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { fieldValues, withValueAt } from "../../src/design/changeAt";
import { type Design, parseDesign } from "../../src/design/design";
import { pierHallLeft } from "../../src/design/examples";
import { CoilDrawing } from "../../src/drawing/CoilDrawing";
import { coilExtent } from "../../src/drawing/coilShape";
import { drawnShape } from "../../src/drawing/drawnShape";
import { NotToScale } from "../../src/drawing/NotToScale";
import { ScaleBar } from "../../src/drawing/ScaleBar";
import { fitView } from "../../src/drawing/view";
import { allFields } from "../../src/fields/allFields";
import { TapRuler } from "../../src/panels/tuning/TapRuler";

const EXTREMES = [0, 1e-300, 1e-30, 1e9, 1e30, 1e300];
const MOST_ELEMENTS = 400;
/** Characters of a path's data: a few hundred lines. */
const LONGEST_ATTRIBUTE = 20_000;

function drawn(design: Design) {
  const { shape, notToScale } = drawnShape(design);
  const view = fitView(coilExtent(shape), 640, 560, { side: 84, top: 48, bottom: 56 });
  return render(
    <>
      <CoilDrawing
        view={view}
        shape={design}
        drawn={shape}
        system="metric"
        room={design.room}
        profile={null}
        label="the coil"
      >
        <ScaleBar view={view} system="inch" />
      </CoilDrawing>
      <NotToScale names={notToScale} />
      <TapRuler turns={design.primary.turns} suggested={null} band={null} />
    </>,
  );
}

function faultsOf(container: HTMLElement): string[] {
  const elements = [...container.querySelectorAll("*")];
  const attributes = elements.flatMap((element) => [...element.attributes]);
  return [
    ...(elements.length > MOST_ELEMENTS ? [`${elements.length} elements`] : []),
    ...attributes
      .filter(({ value }) => /NaN|Infinity|undefined|e\+/.test(value) || value.length > LONGEST_ATTRIBUTE)
      .map(({ name, value }) => `${name}="${value.slice(0, 60)}"`),
    ...(/NaN|Infinity|undefined|\d{17}/.test(container.textContent ?? "")
      ? [container.textContent ?? ""]
      : []),
  ];
}

const tried = allFields
  .filter((field) => field.kind === "number" && /^(secondary|topLoad|primary|room)\./.test(field.path))
  .flatMap((field) => fieldValues(pierHallLeft, field.path))
  .flatMap(({ path }) =>
    EXTREMES.map((value) => ({ path, value, design: withValueAt(pierHallLeft, path, value) })),
  )
  .filter(({ design }) => parseDesign(design).ok);

afterEach(() => vi.restoreAllMocks());

describe("the drawing", () => {
  it("holds few elements and no broken number with any field at any extreme", () => {
    const said = vi.spyOn(console, "error").mockImplementation(() => {});
    const faults = tried.flatMap(({ path, value, design }) => {
      const { container, unmount } = drawn(design);
      const found = faultsOf(container).map((fault) => `${path} = ${value}: ${fault}`);
      unmount();
      return found;
    });
    expect(tried.length).toBeGreaterThan(100);
    expect(faults).toEqual([]);
    expect(said).not.toHaveBeenCalled();
  });

  it("says what is not to scale, and that figure itself", () => {
    const { container } = drawn(withValueAt(pierHallLeft, "secondary.windingLength", 1e30));
    const text = container.textContent?.replaceAll("\u202f", " ") ?? "";
    expect(text).toContain("Not drawn to scale: winding length.");
    expect(text).toContain("1.000 × 10³⁰ m");
  });
});
