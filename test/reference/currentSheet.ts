import { MAGNETIC_CONSTANT } from "../../src/calc/constants";
import { completeEllipticKE, type EllipticPair } from "../../src/calc/field/elliptic";

const elliptic: EllipticPair = { K: 0, E: 0 };

/**
 * H, inductance of a cylindrical current sheet:
 * L = μ₀N²/(3l²)·[√(4r² + l²)·(l²K + (4r² − l²)E) − 8r³], m = 4r²/(4r² + l²).
 * A quick closed form; real windings lie 0.1–0.3 % below it (see `windingInductance`).
 *
 * Source: Lorenz, Wied. Ann. 7 (1879); Rosa & Grover, Bulletin of the Bureau of Standards 8 (1912), eq. (72).
 */
export function currentSheetInductance(radius: number, length: number, turns: number): number {
  const diameterSquared = 4 * radius * radius;
  const lengthSquared = length * length;
  const diagonalSquared = diameterSquared + lengthSquared;
  completeEllipticKE(lengthSquared / diagonalSquared, elliptic);
  const { K, E } = elliptic;
  const bracket = Math.sqrt(diagonalSquared) * (lengthSquared * K + (diameterSquared - lengthSquared) * E);
  return ((MAGNETIC_CONSTANT * turns * turns) / (3 * lengthSquared)) * (bracket - 8 * radius ** 3);
}
