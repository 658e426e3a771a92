import { render } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { withValueAt } from "../../src/design/changeAt";
import { pierHallLeft, pierHallRight } from "../../src/design/examples";
import { CoilSketch } from "../../src/drawing/CoilSketch";

const drawn = (...shapes: (typeof pierHallLeft)[]) =>
  render(<CoilSketch shapes={shapes} width={56} height={56} />).container;

describe("a coil at the size of a stamp", () => {
  it("draws each coil at one scale", () => {
    const windings = (shapes: (typeof pierHallLeft)[]) =>
      [...drawn(...shapes).querySelectorAll("rect.winding, [class*=winding]")].map((rect) =>
        Number(rect.getAttribute("height")),
      );
    const [left, right] = windings([pierHallLeft, pierHallRight]);
    const { windingLength } = pierHallLeft.secondary;
    expect(left / right).toBeCloseTo(windingLength / pierHallRight.secondary.windingLength, 9);
  });

  it.each([1e-300, 1e-30, 1e30, 1e300, Number.MAX_VALUE])(
    "draws or leaves out a length of %s m",
    (length) => {
      for (const path of ["secondary.windingLength", "topLoad.elements.0.outerDiameter", "primary.pitch"]) {
        const { innerHTML } = drawn(withValueAt(pierHallLeft, path, length));
        expect(innerHTML).not.toMatch(/NaN|Infinity|undefined/);
        expect(innerHTML.length).toBeLessThan(2000);
      }
    },
  );

  it("draws the ground alone where there is no coil", () => {
    expect(drawn().querySelectorAll("rect")).toHaveLength(0);
  });
});
