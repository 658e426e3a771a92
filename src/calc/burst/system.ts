/**
 * State space of a burst: what changes, how fast, and what energies it holds.
 *
 * | place | code name | meaning | unit |
 * | 0 | CURRENT | i, primary current | A |
 * | 1 | SOURCE | w, voltage that drives it: of the rail less the switches' on-state voltage and the bank's; 0 without it | V |
 * | 2 | SPARK | v_S, voltage of the spark's capacitance if it is in series with a resistance | V |
 * | 3 + 2n | modeCurrent | i_n, current of mode n, normalised to 1 V at the top | A |
 * | 4 + 2n | modeVoltage | u_n, its voltage | V |
 *
 * L·di/dt + Σ M_n·di_n/dt = w − R·i,  dw/dt = −(1/C + 1/C_R)·i,  M_n·di/dt + L_n·di_n/dt = −R_n·i_n − u_n,
 * C_n·du_n/dt = i_n − i_S.
 * While a current flows, rail and bank are in series and the on-state voltage is constant, so that one voltage is
 * enough, and one matrix for both directions of the bridge. Source: circuit theory, mesh analysis.
 */
import type { Network, SparkLoad } from "../circuit/network";
import { type SquareMatrix, type StepLadder, squareMatrix, stepLadder } from "./stepLadder";

export const CURRENT = 0;
export const SOURCE = 1;
export const SPARK = 2;
const FIRST_MODE = 3;

/** Ω, least resistance of a spark: a shorted one stays a finite system. */
export const LEAST_SPARK_RESISTANCE = 1e-3;

/** Place of a mode's current in the state. */
export function modeCurrent(mode: number): number {
  return FIRST_MODE + 2 * mode;
}

/** Place of a mode's voltage in the state. */
export function modeVoltage(mode: number): number {
  return FIRST_MODE + 2 * mode + 1;
}

/** Numbers that a state has. */
export function stateSize({ modes }: Network): number {
  return FIRST_MODE + 2 * modes.length;
}

/** What the conducting path adds to the network. */
export interface ConductingPath {
  /** Ω, switches and reservoir in the path */
  resistance: number;
  /** F of the rail; Infinity for a stiff bus */
  railCapacitance: number;
}

/** H, the primary's inductance with every mode shorted; not above zero where the couplings are impossible. */
export function leakageInductance({ primary, modes }: Network): number {
  return modes.reduce((rest, { mutual, inductance }) => rest - mutual ** 2 / inductance, primary.inductance);
}

/** Spark current and rate of the spark's own voltage as rows over the state. */
interface LoadRows {
  current: Float64Array;
  sparkRate: Float64Array;
}

function seriesLoad(network: Network, load: SparkLoad, rows: LoadRows): LoadRows {
  const conductance = 1 / Math.max(load.resistance, LEAST_SPARK_RESISTANCE);
  rows.current[SPARK] = -conductance;
  for (let mode = 0; mode < network.modes.length; mode++) rows.current[modeVoltage(mode)] = conductance;
  for (let at = 0; at < rows.current.length; at++) rows.sparkRate[at] = rows.current[at] / load.capacitance;
  return rows;
}

/** The capacitance closes a loop with the modes': i_S = (C_S·Σ i_n/C_n + v/R) / (1 + C_S·Σ 1/C_n). */
function parallelLoad({ modes }: Network, load: SparkLoad, rows: LoadRows): LoadRows {
  const elastance = modes.reduce((sum, { capacitance }) => sum + 1 / capacitance, 0);
  const share = 1 / (1 + load.capacitance * elastance);
  const conductance = 1 / Math.max(load.resistance, LEAST_SPARK_RESISTANCE);
  for (let mode = 0; mode < modes.length; mode++) {
    rows.current[modeCurrent(mode)] = (share * load.capacitance) / modes[mode].capacitance;
    rows.current[modeVoltage(mode)] = share * conductance;
  }
  return rows;
}

function loadRows(network: Network): LoadRows {
  const size = stateSize(network);
  const rows = { current: new Float64Array(size), sparkRate: new Float64Array(size) };
  const { load } = network;
  if (!load || !(load.capacitance > 0)) return rows;
  return load.topology === "series" ? seriesLoad(network, load, rows) : parallelLoad(network, load, rows);
}

function writeModes(matrix: SquareMatrix, network: Network, currentRate: Float64Array): void {
  const { size, entries } = matrix;
  const { current, sparkRate } = loadRows(network);
  entries.set(sparkRate, SPARK * size);
  network.modes.forEach(({ inductance, capacitance, resistance, mutual }, mode) => {
    const [i, u] = [modeCurrent(mode), modeVoltage(mode)];
    for (let at = 0; at < size; at++) {
      entries[i * size + at] = (-mutual / inductance) * currentRate[at];
      entries[u * size + at] = -current[at] / capacitance;
    }
    entries[i * size + i] -= resistance / inductance;
    entries[i * size + u] -= 1 / inductance;
    entries[u * size + i] += 1 / capacitance;
  });
}

/** di/dt of the primary as a row over the state, the modes' currents eliminated. */
function primaryCurrentRate(network: Network, resistance: number): Float64Array {
  const leakage = leakageInductance(network);
  const row = new Float64Array(stateSize(network));
  row[CURRENT] = -resistance / leakage;
  row[SOURCE] = 1 / leakage;
  network.modes.forEach((mode, index) => {
    const ratio = mode.mutual / (mode.inductance * leakage);
    row[modeCurrent(index)] = ratio * mode.resistance;
    row[modeVoltage(index)] = ratio;
  });
  return row;
}

/** The system while the primary conducts. */
export function conductingSystem(network: Network, path: ConductingPath): SquareMatrix {
  const matrix = squareMatrix(stateSize(network));
  const { size, entries } = matrix;
  const rate = primaryCurrentRate(network, network.primary.resistance + path.resistance);
  entries.set(rate, CURRENT * size);
  entries[SOURCE * size + CURRENT] = -1 / network.primary.capacitance - 1 / path.railCapacitance;
  writeModes(matrix, network, rate);
  return matrix;
}

/** The system while no current flows in the primary: the modes ring alone. */
export function openSystem(network: Network): SquareMatrix {
  const matrix = squareMatrix(stateSize(network));
  writeModes(matrix, network, new Float64Array(matrix.size));
  return matrix;
}

/** V, what the modes induce in the open primary circuit: −Σ M_n·di_n/dt. */
export function inducedVoltage({ modes }: Network, x: Float64Array): number {
  let voltage = 0;
  for (let mode = 0; mode < modes.length; mode++) {
    const { inductance, resistance, mutual } = modes[mode];
    voltage += (mutual / inductance) * (resistance * x[modeCurrent(mode)] + x[modeVoltage(mode)]);
  }
  return voltage;
}

/** V at the top, the sum over the modes; of the rate of a state, V/s. */
export function topVoltage(modes: number, x: Float64Array): number {
  let sum = 0;
  for (let mode = 0; mode < modes; mode++) sum += x[modeVoltage(mode)];
  return sum;
}

/**
 * J held in coils and capacitances, reservoir left out.
 * @param bank V across it
 */
export function storedEnergy({ primary, modes, load }: Network, bank: number, x: Float64Array): number {
  const twice = modes.reduce(
    (sum, { inductance, capacitance, mutual }, mode) => {
      const [i, u] = [x[modeCurrent(mode)], x[modeVoltage(mode)]];
      return sum + inductance * i * i + capacitance * u * u + 2 * mutual * i * x[CURRENT];
    },
    primary.inductance * x[CURRENT] ** 2 + primary.capacitance * bank ** 2,
  );
  return 0.5 * (twice + loadEnergy(load, x, modes.length));
}

function loadEnergy(load: SparkLoad | null, x: Float64Array, modes: number): number {
  if (!load) return 0;
  return load.capacitance * (load.topology === "series" ? x[SPARK] : topVoltage(modes, x)) ** 2;
}

/** J in the modes and the spark alone. */
export function secondaryEnergy(network: Network, x: Float64Array): number {
  const { modes, load } = network;
  let twice = loadEnergy(load, x, modes.length);
  for (let mode = 0; mode < modes.length; mode++) {
    const { inductance, capacitance } = modes[mode];
    twice += inductance * x[modeCurrent(mode)] ** 2 + capacitance * x[modeVoltage(mode)] ** 2;
  }
  return 0.5 * twice;
}

/** rad/s, above every natural frequency of the network: what a step has to resolve. */
export function highestFrequency(network: Network): number {
  const { primary, modes } = network;
  const share = leakageInductance(network) / primary.inductance;
  const own = [primary, ...modes].map(({ inductance, capacitance }) => 1 / (inductance * capacitance));
  return Math.sqrt(Math.max(...own) / share);
}

/**
 * Steps per period of what primary and fundamental can ring at, and of the highest overtone, which carries little.
 * The integrals are accurate to 1e-6 or so, as the errors of the corrected trapezium rule cancel from step to step;
 * peaks between steps are read from cubics, to 3e-5 and 4e-4 of an overtone's share.
 */
const STEPS_PER_PERIOD = 20;
const STEPS_PER_OVERTONE = 10;

/** s, what resolves the network's fastest ringing. */
export function longestStep(network: Network): number {
  const withoutOvertones = { ...network, modes: network.modes.slice(0, 1) };
  const fundamental = STEPS_PER_PERIOD * highestFrequency(withoutOvertones);
  return (2 * Math.PI) / Math.max(fundamental, STEPS_PER_OVERTONE * highestFrequency(network));
}

/** The losses other than those of the primary. */
export interface Losses {
  modeResistances: readonly number[];
  /** S of the spark's resistance; 0 without a spark */
  sparkConductance: number;
}

function lossesOf({ load, modes }: Network): Losses {
  const sparks = load !== null && load.capacitance > 0;
  return {
    modeResistances: modes.map(({ resistance }) => resistance),
    sparkConductance: sparks ? 1 / Math.max(load.resistance, LEAST_SPARK_RESISTANCE) : 0,
  };
}

/** V across the spark's resistance, of a rate V/s: behind the capacitance of a series load, else the whole top voltage. */
export function sparkVoltage(modes: number, x: Float64Array): number {
  return topVoltage(modes, x) - x[SPARK];
}

/** The network with its load of the moment, and what is worked out from it once. */
export interface BurstSystem {
  network: Network;
  conducting: StepLadder;
  /** made when it is first needed */
  open: StepLadder | null;
  losses: Losses;
}

/** @param step s, the longest */
export function burstSystem(network: Network, path: ConductingPath, step: number): BurstSystem {
  const conducting = stepLadder(conductingSystem(network, path), step);
  return { network, conducting, open: null, losses: lossesOf(network) };
}

/** The steps while no current flows in the primary. */
export function openLadder(system: BurstSystem): StepLadder {
  system.open ??= stepLadder(openSystem(system.network), system.conducting.step);
  return system.open;
}

/** A/s, of the primary while it conducts. */
export function currentRate({ conducting }: BurstSystem, x: Float64Array): number {
  const { size, entries } = conducting.system;
  let sum = 0;
  for (let column = 0; column < size; column++) sum += entries[CURRENT * size + column] * x[column];
  return sum;
}
