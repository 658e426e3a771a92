/**
 * The coupled network: primary loop, modes of the secondary, spark load.
 *
 * Each mode is normalised to 1 V at the top, so that its capacitance is twice the mode's energy per
 * square volt, and v_top is the sum of the modes' voltages; the spark's current loads every mode.
 *
 * | symbol | code name | meaning | unit |
 * | s | – | complex frequency, σ + jω | 1/s |
 * | Zₚ | – | R + sL + 1/(sC) of the primary loop | Ω |
 * | Zₙ, Xₙ | – | Rₙ + sLₙ + Xₙ and 1/(sCₙ) of mode n | Ω |
 * | Y | – | admittance of the spark load | S |
 *
 * Source: circuit theory, mesh analysis; terman1943, sec. 3, for two circuits.
 */
import { add, type Complex, complex, divide, multiply, scale, subtract } from "../linear/complex";

export interface PrimaryLoop {
  /** H, leads included */
  inductance: number;
  /** Ω, tube, bank and switches */
  resistance: number;
  /** F */
  capacitance: number;
}

export interface ModeCircuit {
  inductance: number;
  capacitance: number;
  resistance: number;
  /** H, with its sign */
  mutual: number;
}

export interface SparkLoad {
  resistance: number;
  capacitance: number;
  topology: "series" | "parallel";
}

export interface Network {
  primary: PrimaryLoop;
  modes: ModeCircuit[];
  load: SparkLoad | null;
}

const ZERO = complex(0);
const ONE = complex(1);

/** Admittance of the spark load at s. */
function loadAdmittance(load: SparkLoad | null, s: Complex): Complex {
  if (!load || load.capacitance === 0) return ZERO;
  const capacitive = scale(s, load.capacitance);
  if (load.topology === "parallel") return add(capacitive, complex(1 / load.resistance));
  return divide(capacitive, add(ONE, scale(capacitive, load.resistance)));
}

function loopImpedance(inductance: number, resistance: number, capacitance: number, s: Complex): Complex {
  return add(add(complex(resistance), scale(s, inductance)), divide(complex(1 / capacitance), s));
}

/** All modes together, seen from the top and from the primary. */
interface Secondary {
  /** Ω, impedance at the top with the primary open: Σ Xₙ(1 − Xₙ/Zₙ) */
  atTop: Complex;
  /** Ω, top voltage per primary ampere with no load, sign reversed: s·Σ XₙMₙ/Zₙ */
  transfer: Complex;
  /** Ω, reflected into the primary with no load: −s²·Σ Mₙ²/Zₙ */
  reflected: Complex;
}

function secondaryAt({ modes }: Network, s: Complex): Secondary {
  let [atTop, transfer, reflected] = [ZERO, ZERO, ZERO];
  const minusSquare = scale(multiply(s, s), -1);
  for (const { inductance, capacitance, resistance, mutual } of modes) {
    const own = divide(complex(1 / capacitance), s);
    const impedance = loopImpedance(inductance, resistance, capacitance, s);
    const part = divide(own, impedance);
    atTop = add(atTop, multiply(own, subtract(ONE, part)));
    transfer = add(transfer, scale(multiply(s, part), mutual));
    reflected = add(reflected, divide(scale(minusSquare, mutual * mutual), impedance));
  }
  return { atTop, transfer, reflected };
}

export interface Response {
  /** Ω that the bridge sees */
  inputImpedance: Complex;
  /** top voltage per volt of a source in place of the bridge */
  topVoltagePerVolt: Complex;
}

/** Response at a complex frequency; at s = jω the one to a sine. */
export function responseAt(network: Network, s: Complex): Response {
  const { primary, load } = network;
  const { atTop, transfer, reflected } = secondaryAt(network, s);
  const admittance = loadAdmittance(load, s);
  const loading = add(ONE, multiply(atTop, admittance));
  const throughLoad = divide(multiply(multiply(transfer, transfer), admittance), loading);
  const own = loopImpedance(primary.inductance, primary.resistance, primary.capacitance, s);
  const inputImpedance = subtract(add(own, reflected), throughLoad);
  return {
    inputImpedance,
    topVoltagePerVolt: divide(scale(transfer, -1), multiply(loading, inputImpedance)),
  };
}

/** Response to a sine of a frequency, Hz. */
export function sineResponse(network: Network, frequency: number): Response {
  return responseAt(network, complex(0, 2 * Math.PI * frequency));
}

/**
 * A function of s whose zeros are the natural frequencies of the whole network: the input impedance,
 * with the fundamental's own resonance multiplied out so that nothing is lost as the coupling vanishes.
 */
export function networkDeterminant(network: Network, s: Complex): Complex {
  const { primary, modes, load } = network;
  const { atTop, transfer, reflected } = secondaryAt(network, s);
  const admittance = loadAdmittance(load, s);
  const loading = add(ONE, multiply(atTop, admittance));
  const own = loopImpedance(primary.inductance, primary.resistance, primary.capacitance, s);
  const throughLoad = multiply(multiply(transfer, transfer), admittance);
  const [{ inductance, resistance, capacitance }] = modes;
  const fundamental = loopImpedance(inductance, resistance, capacitance, s);
  return multiply(subtract(multiply(add(own, reflected), loading), throughLoad), fundamental);
}

/** The same for the secondary alone, primary open. */
export function secondaryDeterminant(network: Network, s: Complex): Complex {
  const { atTop } = secondaryAt(network, s);
  const fundamental = network.modes[0];
  const own = loopImpedance(fundamental.inductance, fundamental.resistance, fundamental.capacitance, s);
  return multiply(add(ONE, multiply(atTop, loadAdmittance(network.load, s))), own);
}
