/** Random networks and drives as a coil may have them. */
import fc from "fast-check";
import type { BurstDrive } from "../../../src/calc/burst/burstDrive";
import type { ModeCircuit, Network, SparkLoad } from "../../../src/calc/circuit/network";

function between(low: number, high: number): fc.Arbitrary<number> {
  return fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);
}

interface ModeShape {
  capacitance: number;
  ratio: number;
  coupling: number;
  qualityFactor: number;
}

function modeShape(ratioLow: number, ratioHigh: number, coupling: fc.Arbitrary<number>) {
  return fc.record({
    capacitance: between(5e-12, 6e-11),
    ratio: between(ratioLow, ratioHigh),
    coupling,
    qualityFactor: between(50, 600),
  });
}

const overtoneCoupling = fc.double({ min: -0.08, max: 0.08, noNaN: true });

export const load: fc.Arbitrary<SparkLoad | null> = fc.option(
  fc.record({
    resistance: between(2e4, 1e6),
    capacitance: between(1e-13, 2e-11),
    topology: fc.constantFrom("series" as const, "parallel" as const),
  }),
  { freq: 4 },
);

function modeCircuit(shape: ModeShape, omega: number, primaryInductance: number): ModeCircuit {
  const own = omega * shape.ratio;
  const inductance = 1 / (own * own * shape.capacitance);
  return {
    inductance,
    capacitance: shape.capacitance,
    resistance: (own * inductance) / shape.qualityFactor,
    mutual: shape.coupling * Math.sqrt(primaryInductance * inductance),
  };
}

export const network: fc.Arbitrary<Network> = fc
  .record({
    frequency: between(40e3, 400e3),
    inductance: between(4e-6, 8e-5),
    detuning: between(0.85, 1.18),
    qualityFactor: between(30, 300),
    modes: fc.tuple(
      modeShape(1, 1, between(0.05, 0.3)),
      modeShape(2.6, 3, overtoneCoupling),
      modeShape(4.2, 4.7, overtoneCoupling),
    ),
    load,
  })
  .map(({ frequency, inductance, detuning, qualityFactor, modes, load }) => {
    const omega = 2 * Math.PI * frequency;
    return {
      primary: {
        inductance,
        capacitance: 1 / (omega * omega * detuning * detuning * inductance),
        resistance: (omega * inductance) / qualityFactor,
      },
      modes: modes.map((shape) => modeCircuit(shape, omega, inductance)),
      load,
    };
  });

/** Hz of the primary alone. */
export function primaryFrequency({ primary }: Network): number {
  return 1 / (2 * Math.PI * Math.sqrt(primary.inductance * primary.capacitance));
}

export const STIFF_DRIVE: BurstDrive = {
  busVoltage: 325,
  reservoirCapacitance: Number.POSITIVE_INFINITY,
  reservoirSeriesResistance: 0,
  bridge: "full",
  onStateVoltage: 0,
  onStateResistance: 1e-3,
  turnOffEnergyPerVoltAmpere: 1e-7,
  commutation: { mode: "primary current", leadTime: 0, delay: 0, deadTime: 0, frequency: null },
  overCurrentLimit: Number.POSITIVE_INFINITY,
  overCurrentAction: "end burst",
  onTime: 100e-6,
};

/** A drive for a network; times as parts of the primary's period. */
export const driveFor = (of: Network): fc.Arbitrary<BurstDrive> => {
  const period = 1 / primaryFrequency(of);
  const part = (most: number) => fc.double({ min: 0, max: most * period, noNaN: true });
  return fc.record({
    busVoltage: between(50, 800),
    reservoirCapacitance: between(2e-4, 1e-2),
    reservoirSeriesResistance: fc.double({ min: 0, max: 0.05, noNaN: true }),
    bridge: fc.constantFrom("full" as const, "half" as const),
    onStateVoltage: fc.double({ min: 0, max: 2, noNaN: true }),
    onStateResistance: between(1e-4, 2e-2),
    turnOffEnergyPerVoltAmpere: fc.constant(1e-7),
    commutation: fc.record({
      mode: fc.constantFrom("primary current" as const, "fixed frequency" as const),
      frequency: between(0.7 / period, 1.4 / period),
      leadTime: part(0.2),
      delay: part(0.1),
      deadTime: part(0.1),
    }),
    overCurrentLimit: fc.oneof(fc.constant(Number.POSITIVE_INFINITY), between(20, 2000)),
    overCurrentAction: fc.constantFrom("end burst" as const, "end half cycle" as const),
    onTime: between(2e-5, 2e-4),
  });
};

export const networkAndDrive = network.chain((of) => driveFor(of).map((drive) => ({ network: of, drive })));

/** Runs of a property are the same each time. */
