import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { couplingCoefficient, profileMutual } from "../../../src/calc/coil/coupling";
import { closestPitch, type PrimaryTube, primaryAtTap, solvePrimary } from "../../../src/calc/coil/primary";
import { conductorLength } from "../../../src/calc/coil/primaryGeometry";
import { primaryAcResistance, wallResistance } from "../../../src/calc/coil/primaryLoss";
import { mutualAtTap, sectionMutuals } from "../../../src/calc/coil/sectionMutuals";
import { windingAcResistance } from "../../../src/calc/coil/windingLoss";
import { sectionInductanceMatrix } from "../../../src/calc/field/windingInductance";
import { runs } from "../../properties";

const TUBE: PrimaryTube = {
  innerRadius: 0.105,
  turns: 8,
  pitch: 0.0145,
  inclinationDegrees: 0,
  tubeDiameter: 0.0095,
  wallThickness: 0.0008,
  baseHeight: 0.1,
};
const WINDING = {
  turns: 1480,
  pitch: 0.56 / 1480,
  radius: 0.0627,
  conductorRadius: 0.0001675,
  baseHeight: 0.11,
};
const SECTIONS = 40;
const UNIFORM = new Float64Array(SECTIONS).fill(1);
const COPPER = 1e-6 / 58;

function at(tube: PrimaryTube, tap: number, options = {}) {
  const solution = solvePrimary(tube, options)!;
  const table = sectionMutuals(solution, WINDING, SECTIONS);
  const mutuals = mutualAtTap(table, tap)!;
  const { inductance } = primaryAtTap(solution, tap)!;
  const matrix = sectionInductanceMatrix(WINDING, SECTIONS);
  return {
    inductance,
    k: couplingCoefficient(
      profileMutual(mutuals, UNIFORM),
      inductance,
      matrix.reduce((sum, value) => sum + value, 0),
    ),
  };
}

const primaries = fc.record({
  innerRadius: fc.double({ min: 0.08, max: 0.3, noNaN: true }),
  turns: fc.double({ min: 1.2, max: 12, noNaN: true }),
  tubeDiameter: fc.double({ min: 0.004, max: 0.012, noNaN: true }),
  pitch: fc.double({ min: 0.0135, max: 0.025, noNaN: true }),
  inclinationDegrees: fc.double({ min: 0, max: 90, noNaN: true }),
  wallThickness: fc.constant(0.0008),
  baseHeight: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
});

describe("the primary", () => {
  it("converges: twice the nodes change inductance and k by less than 0.2 %, and 0 ≤ k ≤ 1", () => {
    fc.assert(
      fc.property(primaries, fc.double({ min: 0.3, max: 1, noNaN: true }), (tube, part) => {
        const tap = part * tube.turns;
        const coarse = at(tube, tap);
        const fine = at(tube, tap, { refinement: 2 });
        expect(Math.abs(coarse.inductance / fine.inductance - 1)).toBeLessThan(2e-3);
        expect(Math.abs(coarse.k / fine.k - 1)).toBeLessThan(2e-3);
        expect(coarse.k).toBeGreaterThanOrEqual(0);
        expect(coarse.k).toBeLessThanOrEqual(1);
      }),
      runs(20, 20),
    );
  });

  it.each([1e-3, 1e3])("scales with size × %s", (scale) => {
    const { innerRadius, pitch, tubeDiameter, wallThickness, baseHeight } = TUBE;
    const sizes = { innerRadius, pitch, tubeDiameter, wallThickness, baseHeight };
    const scaled = Object.fromEntries(Object.entries(sizes).map(([name, size]) => [name, size * scale]));
    const one = primaryAtTap(solvePrimary(TUBE)!, 6.2)!;
    const other = primaryAtTap(solvePrimary({ ...TUBE, ...scaled })!, 6.2)!;
    expect(other.inductance / (scale * one.inductance)).toBeCloseTo(1, 9);
    expect(other.freeEndStepUp / one.freeEndStepUp).toBeCloseTo(1, 9);
  });

  it("is smooth in the tap: value and slope run through whole turns", () => {
    const solution = solvePrimary(TUBE)!;
    const inductance = (tap: number) => primaryAtTap(solution, tap)!.inductance;
    for (const turn of [1, 2, 3, 6, 7]) {
      const [before, here, after] = [inductance(turn - 1e-4), inductance(turn), inductance(turn + 1e-4)];
      expect((after - here) / (here - before)).toBeCloseTo(1, 2);
    }
  });

  it("grows with the tap, from a hundredth of a turn on", () => {
    const solution = solvePrimary(TUBE)!;
    let previous = 0;
    for (let tap = 0.01; tap <= 8; tap += 0.0731) {
      const { inductance } = primaryAtTap(solution, tap)!;
      expect(inductance).toBeGreaterThan(previous);
      previous = inductance;
    }
  });

  it("hardly changes when a turn is begun", () => {
    const before = primaryAtTap(solvePrimary(TUBE)!, 6.2)!.inductance;
    const after = primaryAtTap(solvePrimary({ ...TUBE, turns: 8 + 1e-6 })!, 6.2)!.inductance;
    expect(after / before).toBeCloseTo(1, 6);
  });

  it("reads 1–6 % more on a meter (crowding and unused turns), and steps up to the free end", () => {
    const solution = solvePrimary(TUBE)!;
    const { inductance, lowFrequencyInductance, freeEndStepUp } = primaryAtTap(solution, 6.2)!;
    expect(lowFrequencyInductance / inductance).toBeGreaterThan(1.01);
    expect(lowFrequencyInductance / inductance).toBeLessThan(1.06);
    expect(freeEndStepUp).toBeGreaterThan(1);
    expect(primaryAtTap(solution, 8)!.freeEndStepUp).toBeCloseTo(1, 12);
    expect(primaryAtTap(solution, TUBE.turns)!.lowFrequencyInductance).toBeGreaterThan(
      lowFrequencyInductance,
    );
  });

  it("loses inductance over a floor that conducts, and more when it is nearer", () => {
    const over = (baseHeight: number) =>
      primaryAtTap(solvePrimary({ ...TUBE, baseHeight }, { floorConducts: true })!, 6)!.inductance;
    const free = primaryAtTap(solvePrimary(TUBE)!, 6)!.inductance;
    expect(over(0.05)).toBeLessThan(over(0.1));
    expect(over(0.1)).toBeLessThan(free);
    expect(over(50) / free).toBeCloseTo(1, 6);
  });

  it.each([
    ["turns that touch", { pitch: 0.009 }],
    ["no turns", { turns: 0 }],
    ["a radius that is not a number", { innerRadius: Number.NaN }],
    ["a conductor through the axis", { innerRadius: 0.003 }],
    ["thousands of turns", { turns: 5000 }],
  ])("has no solution with %s", (_, change) => {
    expect(solvePrimary({ ...TUBE, ...change })).toBeNull();
  });

  it.each([6, 12, 25, 40])(
    "of %d turns is within a per cent of finer nodes at the closest pitch, and has no solution below it",
    (turns) => {
      const closest = { ...TUBE, turns, pitch: closestPitch({ ...TUBE, turns }) * (1 + 1e-9) };
      const [coarse, fine] = [1, 1.5].map(
        (refinement) => primaryAtTap(solvePrimary(closest, { refinement })!, 0.8 * turns)!.inductance,
      );
      expect(Math.abs(coarse / fine - 1)).toBeLessThan(1e-2);
      expect(solvePrimary({ ...closest, pitch: closest.pitch * 0.999 })).toBeNull();
    },
  );

  it.each([0, -1, 8.01, Number.NaN])("has nothing to say about a tap at %s of 8 turns", (tap) => {
    const solution = solvePrimary(TUBE)!;
    expect(primaryAtTap(solution, tap)).toBeNull();
    expect(mutualAtTap(sectionMutuals(solution, WINDING, 5), tap)).toBeNull();
    expect(primaryAcResistance(solution, tap, 1e5, COPPER)).toBeNull();
  });

  it("has the arc length of its spiral, helix and flat alike", () => {
    const helix = { ...TUBE, inclinationDegrees: 90 };
    expect(conductorLength(helix, 3)).toBeCloseTo(3 * Math.hypot(2 * Math.PI * 0.105, 0.0145), 9);
    let sum = 0;
    for (let i = 0; i < 4000; i++)
      sum += Math.hypot(0.105 + ((i + 0.5) / 500) * 0.0145, 0.0145 / (2 * Math.PI));
    expect(conductorLength(TUBE, 8)).toBeCloseTo((sum * 2 * Math.PI * 8) / 4000, 6);
  });
});

describe("losses", () => {
  it("of a wall go from thin to thick", () => {
    const depth = 0.0661e-3;
    expect(wallResistance(1e-6, 1e6, COPPER) / (COPPER / 1e-6)).toBeCloseTo(1, 6);
    expect(wallResistance(1e-2, 1e6, COPPER) / (COPPER / depth)).toBeCloseTo(1, 3);
  });

  it("of the crowded tube exceed those of an even surface current", () => {
    const solution = solvePrimary(TUBE)!;
    const resistance = primaryAcResistance(solution, 6.2, 140e3, COPPER)!;
    const even =
      (conductorLength(TUBE, 6.2) / (Math.PI * TUBE.tubeDiameter)) * wallResistance(0.0008, 140e3, COPPER);
    expect(resistance).toBeGreaterThan(even);
    expect(resistance).toBeLessThan(4 * even);
  });

  it.each([0.2, 0.5, 0.7])(
    "of a wide turn over a conducting floor are those of a wire and its image, %d of their distance thick",
    (thickness) => {
      // two parallel wires with opposite surface currents: 1/√(1 − (d/D)²) of the even current's loss;
      // the turn is 400 of its distances wide, so that it is all but straight
      const distance = 0.02;
      const tubeDiameter = thickness * distance;
      const turn = { ...TUBE, innerRadius: 4, turns: 1, tubeDiameter, baseHeight: distance / 2 };
      const { lossFactor } = solvePrimary(turn, { floorConducts: true, refinement: 2 })!;
      expect(lossFactor[1] * Math.sqrt(1 - thickness ** 2)).toBeCloseTo(1, 2);
    },
  );

  it("of the winding tend to direct current at low frequency and grow with frequency", () => {
    const profile = Float64Array.from({ length: 60 }, (_, s) => Math.cos((s / 60) * 1.4));
    const at = (frequency: number) => windingAcResistance(WINDING, profile, frequency, COPPER);
    expect(at(10).resistance / at(10).directCurrentResistance).toBeCloseTo(1, 6);
    expect(at(2e5).resistance).toBeGreaterThan(at(1e5).resistance);
    expect(windingAcResistance({ ...WINDING, pitch: 0.0003 }, profile, 1e5, COPPER).resistance).toBeNaN();
  });

  it("of a coil a hundred diameters long are those of the endless row", () => {
    const long = { ...WINDING, turns: 40000, radius: 0.01 };
    const loss = windingAcResistance(long, new Float64Array(200).fill(1), 140e3, COPPER);
    expect(loss.alongField).toBeGreaterThan(50 * loss.acrossField);
  });
});
