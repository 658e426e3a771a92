import { describe, expect, it } from "vitest";
import { type PairedCoil, pairCoupling } from "../../../src/calc/coil/pairCoupling";
import { ELECTRIC_CONSTANT, MAGNETIC_CONSTANT } from "../../../src/calc/constants";
import { dipoleMutualInductance } from "../field/dipoleMutualInductance";

const RESONANCE = 200e3;
const CAPACITANCE = 25e-12;

/** A winding with a quarter-wave current and its charge in three rings. */
function coil(radius: number, lowerEnd: number, windingLength: number, turns: number): PairedCoil {
  const base = 2 * Math.PI * RESONANCE * CAPACITANCE;
  const current = Array.from({ length: 40 }, (_, s) => base * Math.cos((0.7 * (s + 0.5)) / 40));
  const top = lowerEnd + windingLength;
  return {
    radius,
    lowerEnd,
    windingLength,
    turns,
    current,
    rings: [
      { radius, height: lowerEnd + 0.3 * windingLength, charge: 3e-12 },
      { radius, height: lowerEnd + 0.7 * windingLength, charge: 5e-12 },
      { radius: 2 * radius, height: top + 0.08, charge: 17e-12 },
    ],
    resonance: RESONANCE,
    capacitance: CAPACITANCE,
    inductance: 1 / ((2 * Math.PI * RESONANCE) ** 2 * CAPACITANCE),
  };
}

const left = coil(0.055, 0.1, 0.4, 1000);
const right = coil(0.08, 0.13, 0.46, 1020);

describe("the coupling of two coils side by side", () => {
  it("is the same from either side", () => {
    const [there, back] = [pairCoupling(left, right, 0.9), pairCoupling(right, left, 0.9)];
    expect(there.mutualInductance / back.mutualInductance).toBeCloseTo(1, 9);
    expect(there.mutualElastance / back.mutualElastance).toBeCloseTo(1, 9);
  });

  it("is negative for the flux and positive for the charge", () => {
    const { magnetic, capacitive } = pairCoupling(left, right, 1);
    expect(magnetic).toBeLessThan(0);
    expect(capacitive).toBeGreaterThan(0);
  });

  it("goes to nothing with distance, as the cube of it in the end", () => {
    const at = [0.6, 1.2, 2.4, 4.8, 40, 80].map((spacing) => pairCoupling(left, right, spacing));
    for (let i = 1; i < at.length; i++) {
      expect(Math.abs(at[i].magnetic)).toBeLessThan(Math.abs(at[i - 1].magnetic));
      expect(at[i].capacitive).toBeLessThan(at[i - 1].capacitive);
    }
    expect(at[4].magnetic / at[5].magnetic).toBeCloseTo(8, 2);
    expect(at[4].capacitive / at[5].capacitive).toBeCloseTo(8, 2);
  });

  // Smythe, Static and Dynamic Electricity, 7.00: magnetic dipoles
  it("far apart has the mutual inductance of two magnetic dipoles", () => {
    const spacing = 50;
    const mean = (each: PairedCoil) =>
      (each.turns * each.current.reduce((sum, value) => sum + value, 0)) / each.current.length;
    const perTurn = dipoleMutualInductance(left.radius, right.radius, spacing, 0);
    const scale = (2 * Math.PI * RESONANCE * CAPACITANCE) ** 2;
    const expected = (perTurn * mean(left) * mean(right)) / scale;
    expect(pairCoupling(left, right, spacing).mutualInductance / expected).toBeCloseTo(1, 3);
    expect(perTurn).toBeCloseTo(
      (-MAGNETIC_CONSTANT * Math.PI * (left.radius * right.radius) ** 2) / (4 * spacing ** 3),
      20,
    );
  });

  // Maxwell, Treatise, art. 157: a charge at z over a plane and its image are a dipole 2qz
  it("far apart has the elastance of two dipoles over a plane, 2p₁p₂/(4πε₀d³)", () => {
    const spacing = 50;
    const moment = (each: PairedCoil) =>
      each.rings.reduce((sum, { charge, height }) => sum + charge * height, 0);
    const energy = (2 * moment(left) * moment(right)) / (4 * Math.PI * ELECTRIC_CONSTANT * spacing ** 3);
    const { mutualElastance } = pairCoupling(left, right, spacing);
    expect((mutualElastance * CAPACITANCE * CAPACITANCE) / energy).toBeCloseTo(1, 3);
  });

  it("over a floor that conducts loses flux to the mirrored coil, all of it where they lie on it", () => {
    const free = pairCoupling(left, right, 1, false).mutualInductance;
    const floored = pairCoupling(left, right, 1, true).mutualInductance;
    expect(Math.abs(floored - free)).toBeGreaterThan(0);
    const flat = coil(0.1, 0, 1e-6, 10);
    expect(Math.abs(pairCoupling(flat, flat, 1, true).magnetic)).toBeLessThan(
      1e-6 * Math.abs(pairCoupling(flat, flat, 1, false).magnetic),
    );
  });
});
