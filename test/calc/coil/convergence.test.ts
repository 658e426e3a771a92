import { describe, expect, it } from "vitest";
import { criticalField } from "../../../src/calc/coil/breakout";
import { coilConductors } from "../../../src/calc/coil/conductors";
import { couplingCoefficient, profileMutual } from "../../../src/calc/coil/coupling";
import { crossings } from "../../../src/calc/coil/crossings";
import { solveElectricField } from "../../../src/calc/coil/electricField";
import { coilMesh } from "../../../src/calc/coil/mesh";
import { primaryAtTap, solvePrimary } from "../../../src/calc/coil/primary";
import { secondaryModes } from "../../../src/calc/coil/secondaryModes";
import { mutualAtTap, sectionMutuals } from "../../../src/calc/coil/sectionMutuals";
import { topLoadFields } from "../../../src/calc/coil/topLoadField";
import { sectionInductanceMatrix } from "../../../src/calc/field/windingInductance";
import type { Design } from "../../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { randomCoils } from "./randomCoils";

function conductorsOf({ secondary, topLoad, primary, room }: Design) {
  return coilConductors(secondary, topLoad.elements, primary, room);
}

const fit = (design: Design): boolean =>
  crossings(conductorsOf(design)).length === 0 && solvePrimary(design.primary) !== null;

/** Resonance, coupling and breakout voltage with every discretisation multiplied. */
function solved(design: Design, refinement: number) {
  const { secondary, topLoad, primary, air } = design;
  const sections = 100 * refinement;
  const field = solveElectricField(
    coilMesh(conductorsOf(design), refinement),
    { ceilingHeight: null },
    16 * refinement,
  );
  const winding = {
    turns: secondary.turns,
    pitch: secondary.windingLength / secondary.turns,
    radius: (secondary.formerDiameter + secondary.wire.overallDiameter) / 2,
    conductorRadius: secondary.wire.conductorDiameter / 2,
  };
  const matrix = sectionInductanceMatrix(winding, sections);
  const solution = solvePrimary(primary, { refinement });
  if (!field?.loaded || !solution) throw new Error("a valid coil has no solution");
  const [mode] = secondaryModes(field.loaded.elastance, field.functions, matrix, sections);
  const mutuals = mutualAtTap(
    sectionMutuals(solution, { ...winding, baseHeight: secondary.baseHeight }, sections),
    primary.tap,
  );
  const inductance = primaryAtTap(solution, primary.tap)?.inductance;
  if (!mutuals || !inductance) throw new Error("the tap is not on the conductor");
  const [omega, capacitance] = [2 * Math.PI * mode.resonance, mode.effectiveCapacitance];
  const fields = topLoadFields(field, mode);
  return {
    resonance: mode.resonance,
    coupling: couplingCoefficient(
      profileMutual(mutuals, mode.current) / (omega * capacitance),
      inductance,
      1 / (omega ** 2 * capacitance),
    ),
    breakout: Math.min(
      ...fields.map((each, index) => criticalField(topLoad.elements[index], air, 1) / each.largest),
    ),
  };
}

const coils: [string, Design][] = [
  ["the left coil of the pair", pierHallLeft],
  ["the right coil of the pair", pierHallRight],
  ...randomCoils(20, fit).map((design, index): [string, Design] => [`random coil ${index + 1}`, design]),
];

describe("doubling every discretisation", () => {
  it.each(coils)(
    "changes resonance and coupling by less than 0.2 %% and breakout by less than 1 %%: %s",
    (_, design) => {
      const [coarse, fine] = [solved(design, 1), solved(design, 2)];
      expect(Math.abs(coarse.resonance / fine.resonance - 1)).toBeLessThan(2e-3);
      expect(Math.abs(coarse.coupling / fine.coupling - 1)).toBeLessThan(2e-3);
      expect(Math.abs(coarse.breakout / fine.breakout - 1)).toBeLessThan(1e-2);
      expect(coarse.coupling).toBeGreaterThan(0);
      expect(coarse.coupling).toBeLessThan(1);
    },
  );
});

describe("a coil of another size", () => {
  const scaled = (factor: number): Design => {
    const lengths = (value: unknown, key = ""): unknown => {
      if (typeof value === "number")
        return /turns|tap|Degrees|Permittivity|Temperature|Factor/i.test(key) ? value : value * factor;
      if (Array.isArray(value)) return value.map((each) => lengths(each));
      if (value === null || typeof value !== "object") return value;
      return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, lengths(each, name)]));
    };
    const { secondary, topLoad, primary } = pierHallLeft;
    return {
      ...pierHallLeft,
      secondary: lengths(secondary) as Design["secondary"],
      topLoad: lengths(topLoad) as Design["topLoad"],
      primary: lengths(primary) as Design["primary"],
    };
  };

  it.each([1000, 1 / 1000])(
    "scaled by %d has its frequency divided by it and its coupling kept",
    (factor) => {
      const [own, other] = [solved(pierHallLeft, 1), solved(scaled(factor), 1)];
      expect(Math.abs((other.resonance * factor) / own.resonance - 1)).toBeLessThan(1e-9);
      expect(Math.abs(other.coupling / own.coupling - 1)).toBeLessThan(1e-9);
    },
  );
});
