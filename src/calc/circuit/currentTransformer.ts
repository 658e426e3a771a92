/** The current transformers ahead of the over-current comparator. */
import type { CurrentTransformer } from "../design-parts";

type Chain = Omit<CurrentTransformer, "comparatorVoltage">;

export interface TransformerCore {
  /** T, of a sine at the peak current */
  fluxDensity: number;
  /** saturation over it */
  margin: number;
}

export interface CurrentSense {
  /** primary over last secondary current */
  ratio: number;
  /** V at the burden */
  voltage: number;
  /** A in the burden */
  current: number;
  /** W, mean */
  burdenPower: number;
  /** first core first */
  cores: TransformerCore[];
}

function ratioOf(turns: readonly number[]): number {
  return turns.reduce((product, each) => product * each, 1);
}

/**
 * Cores of a cascade: each secondary of N turns sees the burden through the cores after it, divided by their
 * turns squared. Source: circuit theory, u = N·A·dB/dt, so B = U/(2πf·N·A) for a sine.
 */
function coresOf(transformer: Chain, current: number, frequency: number): TransformerCore[] {
  const { turns, burden, coreArea, saturationFluxDensity } = transformer;
  return turns.map((own, index) => {
    const after = ratioOf(turns.slice(index + 1));
    const flowing = current / ratioOf(turns.slice(0, index + 1));
    const voltage = (flowing * burden) / (after * after);
    const fluxDensity = voltage / (2 * Math.PI * frequency * own * coreArea);
    return { fluxDensity, margin: saturationFluxDensity / fluxDensity };
  });
}

/**
 * Currents and voltages in the chain at a primary current, without magnetising currents.
 * @param current A, peak
 * @param rmsCurrent A, over bursts and pauses
 * @param frequency Hz
 */
export function currentSense(
  transformer: Chain,
  current: number,
  rmsCurrent: number,
  frequency: number,
): CurrentSense {
  const ratio = ratioOf(transformer.turns);
  return {
    ratio,
    current: current / ratio,
    voltage: (current / ratio) * transformer.burden,
    burdenPower: (rmsCurrent / ratio) ** 2 * transformer.burden,
    cores: coresOf(transformer, current, frequency),
  };
}

export interface SenseProposal {
  turns: number[];
  /** Ω, of the E24 series */
  burden: number;
  /** V at the comparator when the limit is reached */
  comparatorVoltage: number;
}

/** Preferred values of a decade. Source: iec60063, E24. */
const E24 = [
  1, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2, 2.2, 2.4, 2.7, 3, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2,
  9.1, 10,
];
/** A in the burden at the limit: enough for a quick comparator, little for the resistor; common practice, no source. */
const BURDEN_CURRENT = 0.5;
/** Turns that fit easily on one small core; common practice, no source. */
const MOST_TURNS = 120;

function nearestE24(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(value));
  const ratio = value / decade;
  const nearest = E24.reduce((best, each) =>
    Math.abs(Math.log(each / ratio)) < Math.abs(Math.log(best / ratio)) ? each : best,
  );
  return nearest * decade;
}

/** Turns, burden and comparator level for a wanted limit. */
export function proposeSense(limit: number, comparatorVoltage: number): SenseProposal {
  const ratio = Math.max(1, limit / BURDEN_CURRENT);
  const single = Math.round(ratio);
  const each = Math.round(Math.sqrt(ratio));
  const turns = single <= MOST_TURNS ? [single] : [each, each];
  const secondary = limit / ratioOf(turns);
  const burden = nearestE24(comparatorVoltage / secondary);
  return { turns, burden, comparatorVoltage: secondary * burden };
}

/** T, largest flux density of the cores at the largest of some peak currents in A; Infinity at zero frequency. */
export function hardestFluxDensity(chain: Chain, currents: readonly number[], frequency: number): number {
  const cores = coresOf(chain, Math.max(...currents), frequency);
  return Math.max(...cores.map(({ fluxDensity }) => fluxDensity));
}
