import { describe, expect, it } from "vitest";
import { ringMutualInductance, ringSelfInductance } from "../../../src/calc/field/loops";
import { sectionInductanceMatrix } from "../../../src/calc/field/windingInductance";
import { windingInductance } from "../../reference/windingInductance";

const winding = { turns: 23, pitch: 0.002, radius: 0.05, conductorRadius: 0.0007 };

/** Turn by turn, each section taking its fraction of a cut turn. */
function bruteForce(sections: number, height?: number): number[] {
  const { turns, pitch, radius, conductorRadius } = winding;
  const share = (s: number, i: number) =>
    Math.max(0, Math.min((turns * (s + 1)) / sections, i + 1) - Math.max((turns * s) / sections, i));
  const pair = (i: number, j: number) => {
    const own =
      i === j
        ? ringSelfInductance(radius, conductorRadius)
        : ringMutualInductance(radius, radius, (i - j) * pitch);
    const image =
      height === undefined ? 0 : ringMutualInductance(radius, radius, 2 * height + (i + j + 1) * pitch);
    return own - image;
  };
  return Array.from({ length: sections * sections }, (_, at) => {
    let sum = 0;
    for (let i = 0; i < turns; i++) {
      for (let j = 0; j < turns; j++) {
        sum += share(Math.floor(at / sections), i) * share(at % sections, j) * pair(i, j);
      }
    }
    return sum;
  });
}

describe("sections of a winding", () => {
  it.each([
    [1, undefined],
    [7, undefined],
    [7, 0.02],
    [40, undefined],
  ])(
    "in %i parts are the plain double sum over turns (height over a conducting floor %s)",
    (sections, height) => {
      const matrix = sectionInductanceMatrix(winding, sections, { heightAboveConductingFloor: height });
      bruteForce(sections, height).forEach((value, at) => {
        expect(Math.abs(matrix[at]! - value)).toBeLessThan(1e-17);
      });
    },
  );

  it("add up to the same inductance, however many they are", () => {
    const sum = sectionInductanceMatrix(winding, 11).reduce((total, part) => total + part);
    expect(sum / sectionInductanceMatrix(winding, 1)[0]).toBeCloseTo(1, 12);
    expect(sum / windingInductance(winding)).toBeCloseTo(1, 12);
  });

  it("do not jump when a turn is begun", () => {
    const at = (turns: number) => windingInductance({ ...winding, turns });
    expect(at(23 + 1e-9) / at(23)).toBeCloseTo(1, 8);
    expect(at(24 - 1e-9) / at(24)).toBeCloseTo(1, 8);
    expect(at(23.5)).toBeGreaterThan(at(23));
    expect(at(23.5)).toBeLessThan(at(24));
  });

  it("are not a number where there are no turns", () => {
    expect(windingInductance({ ...winding, turns: 0 })).toBeNaN();
    expect(windingInductance({ ...winding, turns: Number.NaN })).toBeNaN();
  });
});
