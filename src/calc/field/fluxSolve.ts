/**
 * Perfectly conducting round turns: the current crowds on their surfaces so that no flux enters.
 *
 * The magnetic flux function ψ = 2πr·A_φ is constant on each turn's surface. ψ at a surface point is the
 * sum of ring mutual inductances times the surface current, a boundary-integral equation with a
 * logarithmic kernel; it is the magnetic twin of the charge solve. Nyström's method: n equidistant
 * nodes on each turn, the logarithm taken out and integrated with Kress's weights (spectral accuracy).
 *
 * Solved once for all turns: turn × turn inductance matrix, and the surface currents that belong to one
 * ampere in each turn with no net current in the others. Any choice of tap is then a sum.
 *
 * Source: kress1989, sec. 12.3 (log split, weights); smythe1950, sec. 8.06 (flux function of a ring).
 */
import { MAGNETIC_CONSTANT } from "../constants";
import { choleskyFactor, choleskySolve } from "../linear/cholesky";
import { completeEllipticKE, type EllipticPair } from "./elliptic";
import { periodicLogarithmWeights } from "./logarithmWeights";
import { ringMutualInductance } from "./loops";

export interface RoundTurns {
  /** m, centre of each turn's conductor */
  radius: Float64Array;
  /** m */
  height: Float64Array;
  /** m */
  conductorRadius: number;
}

export interface FluxSolution {
  turns: number;
  nodesPerTurn: number;
  /** H, turns × turns */
  inductance: Float64Array;
  /** A per ampere: (turn that carries the ampere) × (node of all turns); sums to 1 over that turn */
  surfaceCurrent: Float64Array;
}

/** Turns whose equations are factorised: what the first of them would do alone is a leading part of it. */
export interface FluxSystem {
  nodesPerTurn: number;
  /** of all turns' nodes, in its lower triangle */
  factor: Float64Array;
  /** nodes of all turns */
  stride: number;
}

/**
 * Factorises the equations of the surface currents. `null` if turns touch or overlap, or a size is not
 * positive. With `floorConducts` the plane z = 0 carries no flux (image rings with opposite current).
 */
export function fluxSystem(
  turns: RoundTurns,
  nodesPerTurn: number,
  floorConducts = false,
): FluxSystem | null {
  const stride = turns.radius.length * nodesPerTurn;
  const factor = choleskyFactor(fluxMatrix(turns, nodesPerTurn, floorConducts), stride);
  return factor && { nodesPerTurn, factor, stride };
}

/** Surface currents of the first turns with the others absent; `null` if rounding leaves no inductance. */
export function solveFlux({ nodesPerTurn, factor, stride }: FluxSystem, count: number): FluxSolution | null {
  const size = count * nodesPerTurn;
  const perFlux = currentsForUnitFlux(factor, stride, count, nodesPerTurn);
  const inverse = turnSums(perFlux, count, nodesPerTurn);
  const inverseFactor = choleskyFactor(inverse, count);
  if (inverseFactor === null) return null;
  const inductance = identityColumns(inverseFactor, count);
  const surfaceCurrent = combine(inductance, perFlux, count, size);
  return { turns: count, nodesPerTurn, inductance, surfaceCurrent };
}

/** Row t: node currents that give ψ = 1 on turn t and 0 on the others. */
function currentsForUnitFlux(
  factor: Float64Array,
  stride: number,
  count: number,
  nodes: number,
): Float64Array {
  const size = count * nodes;
  const rows = new Float64Array(count * size);
  for (let t = 0; t < count; t++) {
    const row = rows.subarray(t * size, (t + 1) * size);
    row.fill(1, t * nodes, (t + 1) * nodes);
    choleskySolve(factor, size, row, stride, t * nodes);
  }
  return rows;
}

function turnSums(rows: Float64Array, count: number, nodes: number): Float64Array {
  const sums = new Float64Array(count * count);
  for (let s = 0; s < count * count; s++) {
    for (let k = 0; k < nodes; k++) sums[s] = sums[s] + rows[s * nodes + k];
  }
  return symmetric(sums, count);
}

/** Rounding and discretisation leave a trace of asymmetry; reciprocity does not. */
function symmetric(matrix: Float64Array, size: number): Float64Array {
  return matrix.map((value, at) => {
    const transposed = (at % size) * size + Math.floor(at / size);
    return 0.5 * (value + matrix[transposed]);
  });
}

function identityColumns(factor: Float64Array, size: number): Float64Array {
  const inverse = new Float64Array(size * size);
  for (let t = 0; t < size; t++) {
    const row = inverse.subarray(t * size, (t + 1) * size);
    row[t] = 1;
    choleskySolve(factor, size, row, size, t);
  }
  return inverse;
}

function combine(left: Float64Array, right: Float64Array, count: number, size: number): Float64Array {
  const product = new Float64Array(count * size);
  for (let t = 0; t < count; t++) {
    for (let s = 0; s < count; s++) {
      const weight = left[t * count + s];
      for (let k = 0; k < size; k++) {
        product[t * size + k] = product[t * size + k] + weight * right[s * size + k];
      }
    }
  }
  return product;
}

/** Flux function at node i per ampere at node j; lower triangle only. */
function fluxMatrix(turns: RoundTurns, nodes: number, floorConducts: boolean): Float64Array {
  const count = turns.radius.length;
  const size = count * nodes;
  const { r, z } = surfaceNodes(turns, nodes);
  const matrix = new Float64Array(size * size);
  const weights = periodicLogarithmWeights(nodes);
  for (let i = 0; i < size; i++) {
    const turn = Math.floor(i / nodes);
    for (let j = 0; j <= i; j++) {
      const sameTurn = Math.floor(j / nodes) === turn;
      let value = sameTurn
        ? sameTurnFlux(r[i], r[j], z[i] - z[j], i - j, turns.conductorRadius, nodes, weights)
        : ringMutualInductance(r[i], r[j], z[i] - z[j]);
      if (floorConducts) value -= ringMutualInductance(r[i], r[j], z[i] + z[j]);
      matrix[i * size + j] = value;
    }
  }
  return matrix;
}

/** Positions of the nodes, turn after turn; node k is at the angle 2πk/n from the outermost point. */
export function surfaceNodes(turns: RoundTurns, nodes: number): { r: Float64Array; z: Float64Array } {
  const size = turns.radius.length * nodes;
  const r = new Float64Array(size);
  const z = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    const turn = Math.floor(i / nodes);
    const angle = (2 * Math.PI * (i % nodes)) / nodes;
    r[i] = turns.radius[turn] + turns.conductorRadius * Math.cos(angle);
    z[i] = turns.height[turn] + turns.conductorRadius * Math.sin(angle);
  }
  return { r, z };
}

const elliptic: EllipticPair = { K: 0, E: 0 };

/** −C·(weights of the logarithm) + (kernel + C·ln 4sin²), C the kernel's logarithmic coefficient. */
function sameTurnFlux(
  r: number,
  other: number,
  distance: number,
  apart: number,
  conductorRadius: number,
  nodes: number,
  weights: Float64Array,
): number {
  const logWeight = weights[apart] * (nodes / (2 * Math.PI));
  if (apart === 0) {
    const ring = MAGNETIC_CONSTANT * r;
    return -0.5 * ring * logWeight + ring * (Math.log((8 * r) / conductorRadius) - 2);
  }
  const half = Math.sin((Math.PI * apart) / nodes);
  const coefficient = logarithmicCoefficient(r, other, distance);
  const smooth = ringMutualInductance(r, other, distance) + coefficient * Math.log(4 * half * half);
  return smooth - coefficient * logWeight;
}

/**
 * Coefficient of −ln m₁ in the ring mutual inductance: (μ₀D/π)·[E(m₁) − (m/2)K(m₁)].
 * Source: abramowitzStegun, 17.3.26.
 */
function logarithmicCoefficient(a: number, b: number, distance: number): number {
  const farthestSquared = (a + b) ** 2 + distance * distance;
  const m = (4 * a * b) / farthestSquared;
  completeEllipticKE(m, elliptic);
  return ((MAGNETIC_CONSTANT * Math.sqrt(farthestSquared)) / Math.PI) * (elliptic.E - 0.5 * m * elliptic.K);
}
