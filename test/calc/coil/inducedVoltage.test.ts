import { describe, expect, it } from "vitest";
import { inducedVoltage } from "../../../src/calc/coil/inducedVoltage";
import { splitResonances } from "../../../src/calc/coil/pairResonances";

const source = { resonance: 140e3, capacitance: 26e-12 };
const idle = { resonance: 143e3, capacitance: 31e-12, qualityFactor: 180 };
const coupling = { magnetic: -0.003, capacitive: 0.008 };

/** A sine at a frequency, from rest. */
function sine(frequency: number, cycles: number, perCycle = 64) {
  const time = Array.from({ length: cycles * perCycle + 1 }, (_, index) => index / (perCycle * frequency));
  return { time, voltage: time.map((now) => 1e5 * Math.sin(2 * Math.PI * frequency * now)) };
}

/** The same by the classical rule of Runge and Kutta in small steps, a method of its own. */
function byRungeKutta(frequency: number, until: number): number {
  const [w1, w2, w] = [source.resonance, idle.resonance, frequency].map((each) => 2 * Math.PI * each);
  const scale = Math.sqrt(source.capacitance) / w1;
  const forced = (time: number) => {
    const n1 = 1e5 * scale * Math.sin(w * time);
    return -coupling.capacitive * w1 * w2 * n1 + coupling.magnetic * w * w * n1;
  };
  const rates = (time: number, [n, rate]: number[]) => [
    rate,
    forced(time) - (w2 / idle.qualityFactor) * rate - w2 * w2 * n,
  ];
  const steps = 40_000;
  const h = until / steps;
  // n₂ + k_m·n₁ starts at rest, and n₁ starts with a rate
  let y = [0, -coupling.magnetic * 1e5 * scale * w];
  for (let step = 0; step < steps; step++) {
    const t = step * h;
    const add = (k: number[], part: number) => y.map((each, index) => each + part * h * k[index]);
    const k1 = rates(t, y);
    const k2 = rates(t + h / 2, add(k1, 0.5));
    const k3 = rates(t + h / 2, add(k2, 0.5));
    const k4 = rates(t + h, add(k3, 1));
    y = y.map((each, index) => each + (h / 6) * (k1[index] + 2 * k2[index] + 2 * k3[index] + k4[index]));
  }
  return (y[0] * w2) / Math.sqrt(idle.capacitance);
}

describe("the voltage that a burst induces in an idle coil", () => {
  it("agrees with the equation of motion integrated another way", () => {
    for (const frequency of [130e3, 141e3, 143e3]) {
      const wave = sine(frequency, 20);
      const induced = inducedVoltage(source, idle, coupling, wave);
      const largest = Math.max(...induced.map(Math.abs));
      for (const index of [300, 777, 1280])
        expect(Math.abs(induced[index] - byRungeKutta(frequency, wave.time[index]))).toBeLessThan(
          3e-3 * largest,
        );
    }
  });

  it("grows at the resonance as half of force by time: V·π·f·t·|kₑ − kₘ| between equal coils", () => {
    // driven oscillator from rest at its resonance: Landau and Lifshitz, Mechanics, § 22
    const equal = { ...source, qualityFactor: 1e6 };
    const wave = sine(140e3, 40, 256);
    const induced = inducedVoltage(source, equal, coupling, wave);
    const crest = Math.max(...induced.slice(-256).map(Math.abs));
    expect(crest).toBeCloseTo(1e5 * Math.PI * 40 * 0.011, -2);
  });

  it("begins with the slope of the beat between the split resonances", () => {
    const { inPhase, opposed } = splitResonances(source, source, coupling);
    const wave = sine(140e3, 12, 256);
    const crest = Math.max(
      ...inducedVoltage(source, { ...source, qualityFactor: 1e6 }, coupling, wave).map(Math.abs),
    );
    const beat = 1e5 * Math.PI * (inPhase - opposed) * (12 / 140e3);
    expect(crest / beat).toBeCloseTo(1, 1);
  });

  it("is nothing without coupling, and rings down with its quality factor", () => {
    const wave = sine(140e3, 10);
    const silent = inducedVoltage(source, idle, { magnetic: 0, capacitive: 0 }, wave);
    expect(Math.max(...silent.map(Math.abs))).toBe(0);
    const cycles = 40;
    const still = Array.from(
      { length: cycles * 64 },
      (_, index) => wave.time[640] + (index + 1) / (64 * 143e3),
    );
    const all = { time: [...wave.time, ...still], voltage: [...wave.voltage, ...still.map(() => 0)] };
    const rung = inducedVoltage(source, idle, coupling, all);
    const crestOf = (from: number) => Math.max(...rung.slice(from, from + 64).map(Math.abs));
    const kept = crestOf(640 + 64 * (cycles - 1)) / crestOf(641);
    expect(kept).toBeCloseTo(Math.exp((-Math.PI * (cycles - 1)) / 180), 2);
  });
});
