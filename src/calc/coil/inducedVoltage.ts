/**
 * What a burst of one coil induces in its idle neighbour: the neighbour's fundamental, driven by the top voltage of
 * the first as a wave in time. With the modes' charges scaled by √L, n = V·√C/ω:
 * n̈₂ + (ω₂/Q₂)·ṅ₂ + ω₂²·n₂ = −k_e·ω₁ω₂·n₁ − k_m·n̈₁.
 * The neighbour's reaction on the first is left out: an error of the order of the coupling times the cycles.
 * The wave is linear between its samples, and each piece is integrated exactly.
 * Source: landauLifshitz, § 22–23.
 */
import type { PairCoupling, PairedCoil } from "./pairCoupling";

type Resonator = Pick<PairedCoil, "resonance" | "capacitance">;

export interface IdleCoil extends Resonator {
  qualityFactor: number;
}

export interface VoltageWave {
  /** s, rising */
  time: readonly number[];
  /** V at the top */
  voltage: readonly number[];
}

/** The neighbour's n₂ + k_m·n₁ and its rate. */
interface State {
  value: number;
  rate: number;
}

interface Oscillator {
  /** rad/s */
  omega: number;
  /** 1/s */
  damping: number;
}

/** The state after a step under a force that changes linearly. */
function advance(
  { omega, damping }: Oscillator,
  state: State,
  force: number,
  slope: number,
  step: number,
): State {
  const square = omega * omega;
  const drift = slope / square;
  const offset = force / square - (damping * drift) / square;
  const decay = damping / 2;
  const ringing = Math.sqrt(square - decay * decay);
  const [value, rate] = [state.value - offset, state.rate - drift];
  const kept = Math.exp(-decay * step);
  const [cosine, sine] = [Math.cos(ringing * step), Math.sin(ringing * step)];
  const quadrature = (rate + decay * value) / ringing;
  return {
    value: offset + drift * step + kept * (value * cosine + quadrature * sine),
    rate:
      drift +
      kept *
        ((quadrature * ringing - decay * value) * cosine - (value * ringing + decay * quadrature) * sine),
  };
}

/** V at the top for n = 1. */
function voltagePerCharge({ resonance, capacitance }: Resonator): number {
  return (2 * Math.PI * resonance) / Math.sqrt(capacitance);
}

/**
 * V at the top of an idle coil while its neighbour bursts, at the wave's times; quality factor above one half.
 * @param wave of the neighbour's top, from rest
 */
export function inducedVoltage(
  source: Resonator,
  idle: IdleCoil,
  { magnetic, capacitive }: Pick<PairCoupling, "magnetic" | "capacitive">,
  { time, voltage }: VoltageWave,
): number[] {
  const omega = 2 * Math.PI * idle.resonance;
  const oscillator = { omega, damping: omega / idle.qualityFactor };
  const stiffness = magnetic * omega * omega - capacitive * omega * 2 * Math.PI * source.resonance;
  const charges = voltage.map((each) => each / voltagePerCharge(source));
  let state: State = { value: 0, rate: 0 };
  return time.map((now, index) => {
    if (index === 0) return 0;
    const step = now - time[index - 1];
    if (step > 0) {
      const [from, slope] = [charges[index - 1], (charges[index] - charges[index - 1]) / step];
      const force = stiffness * from + magnetic * oscillator.damping * slope;
      state = advance(oscillator, state, force, stiffness * slope, step);
    }
    return (state.value - magnetic * charges[index]) * voltagePerCharge(idle);
  });
}
