/** The end of a burst, when nothing conducts any more: the modes ring down into their own losses and the spark. */
import type { Network } from "../circuit/network";
import { doubled, lowestStep, product, type SquareMatrix, type StepLadder, transform } from "./stepLadder";
import { type Losses, modeCurrent, modeVoltage, SPARK, secondaryEnergy } from "./system";

/** Doublings of a step of nanoseconds that are tried: beyond an hour nothing is left. */
const MOST_DOUBLINGS = 44;
/** Of the forms over a ladder's lowest rung: exact to 10⁻⁸. */
const SERIES_ORDER = 6;

/** J that a mode can hold at most from now on: with a load, which lets the modes exchange theirs, all of it. */
function mostOfMode(network: Network, x: Float64Array, mode: number, all: number): number {
  if (network.load) return all;
  const { inductance, capacitance } = network.modes[mode];
  return 0.5 * (inductance * x[modeCurrent(mode)] ** 2 + capacitance * x[modeVoltage(mode)] ** 2);
}

/**
 * Whether the open circuit stays below a rail's voltage for ever: each mode's voltage in the primary is at
 * most that of all its energy.
 * @param bank V across it
 * @param lowerRail V that it would have to exceed to drive a current up
 * @param upperRail V, down
 */
export function staysOpen(
  network: Network,
  bank: number,
  x: Float64Array,
  lowerRail: number,
  upperRail: number,
): boolean {
  const all = secondaryEnergy(network, x);
  let most = 0;
  for (let mode = 0; mode < network.modes.length; mode++) {
    const { inductance, capacitance, resistance, mutual } = network.modes[mode];
    const energy = mostOfMode(network, x, mode, all);
    const voltage = Math.sqrt((2 * energy) / capacitance) + resistance * Math.sqrt((2 * energy) / inductance);
    most += Math.abs(mutual / inductance) * voltage;
  }
  return -bank + most <= lowerRail && -bank - most >= -upperRail;
}

interface Quadratic {
  secondary: Float64Array;
  spark: Float64Array;
}

/** ∫ of a dissipation over the first step, as a quadratic form of the state. */
function firstForms(ladder: StepLadder, { modeResistances, sparkConductance }: Losses): Quadratic {
  const { size } = ladder.system;
  const secondary = new Float64Array(size * size);
  const across = new Float64Array(size);
  across[SPARK] = -1;
  modeResistances.forEach((resistance, mode) => {
    const at = modeCurrent(mode);
    secondary[at * size + at] = resistance;
    across[modeVoltage(mode)] = 1;
  });
  const spark = new Float64Array(size * size).map(
    (_, at) => sparkConductance * across[Math.floor(at / size)] * across[at % size],
  );
  return { secondary: overStep(ladder, secondary), spark: overStep(ladder, spark) };
}

/** ∫₀ʰ ΦᵀQΦ dt over the ladder's longest step: over its lowest rung, then doubled. */
function overStep(ladder: StepLadder, form: Float64Array): Float64Array {
  const { system, rungs } = ladder;
  let sum = overShortStep(system, lowestStep(ladder), form);
  for (let rung = rungs.length - 1; rung > 0; rung--) sum = twice(system.size, sum, rungs[rung]);
  return sum;
}

/** The same over a short time: Taylor's series, each term τ/n·(AᵀG + GA) of the one before. */
function overShortStep({ size, entries }: SquareMatrix, time: number, form: Float64Array): Float64Array {
  let term = form.map((entry) => entry * time);
  const sum = term.slice();
  for (let order = 2; order <= SERIES_ORDER; order++) {
    const right = product(size, term, entries);
    const left = transposed(size, right);
    term = right.map((entry, at) => ((entry + left[at]) * time) / order);
    for (let at = 0; at < sum.length; at++) sum[at] += term[at];
  }
  return sum;
}

/** G over twice the time: G + ΦᵀGΦ, with Φ = 1 + E. */
function twice(size: number, form: Float64Array, rung: Float64Array): Float64Array {
  const right = product(size, form, rung);
  const both = product(size, transposed(size, rung), right);
  const left = transposed(size, right);
  return form.map((entry, at) => 2 * entry + right[at] + left[at] + both[at]);
}

function transposed(size: number, matrix: Float64Array): Float64Array {
  return matrix.map((_, at) => matrix[(at % size) * size + Math.floor(at / size)]);
}

function quadratic(size: number, form: Float64Array, x: Float64Array): number {
  const image = new Float64Array(size);
  transform(size, form, x, image);
  return image.reduce((sum, value, at) => sum + value * x[at], 0);
}

interface Decayed {
  /** J */
  secondary: number;
  spark: number;
}

/**
 * Lets the modes ring down until their energy is below a value, and leaves the state there.
 * Source: higham2008, sec. 10.3: doubling of the Gramian, exact for a linear system.
 */
export function ringDown(
  network: Network,
  ladder: StepLadder,
  losses: Losses,
  x: Float64Array,
  floor: number,
): Decayed {
  const { size } = ladder.system;
  let rung = ladder.rungs[0];
  let { secondary, spark } = firstForms(ladder, losses);
  const reached = new Float64Array(size);
  for (let doubling = 0; ; doubling++) {
    transform(size, rung, x, reached);
    for (let row = 0; row < size; row++) reached[row] += x[row];
    if (secondaryEnergy(network, reached) <= floor || doubling === MOST_DOUBLINGS) break;
    secondary = twice(size, secondary, rung);
    spark = twice(size, spark, rung);
    rung = doubled(size, rung);
  }
  const decayed = { secondary: quadratic(size, secondary, x), spark: quadratic(size, spark, x) };
  x.set(reached);
  return decayed;
}
