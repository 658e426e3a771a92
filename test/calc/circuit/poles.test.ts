import fc from "fast-check";
import { EigenvalueDecomposition, Matrix } from "ml-matrix";
import { describe, expect, it } from "vitest";
import type { SquareMatrix } from "../../../src/calc/burst/stepLadder";
import { conductingSystem, openSystem } from "../../../src/calc/burst/system";
import type { Network } from "../../../src/calc/circuit/network";
import { polePair, secondaryPole } from "../../../src/calc/circuit/poles";
import { runs } from "../../properties";
import { network, primaryFrequency } from "./drivenNetworks";

/** Natural frequencies by another road: eigenvalues of the state matrix, each state in units of its energy. */
function eigenvalues({ size, entries }: SquareMatrix, of: Network) {
  const units = energyUnits(of);
  const matrix = Matrix.zeros(size, size);
  for (let row = 0; row < size; row++)
    for (let column = 0; column < size; column++)
      matrix.set(row, column, (entries[row * size + column] * units[column]) / units[row]);
  const { realEigenvalues, imaginaryEigenvalues } = new EigenvalueDecomposition(matrix);
  return imaginaryEigenvalues
    .map((im, index) => ({
      frequency: im / (2 * Math.PI),
      qualityFactor: -im / (2 * realEigenvalues[index]),
    }))
    .filter(({ frequency }) => frequency > 1)
    .sort((a, b) => a.frequency - b.frequency);
}

/** Primary current, voltage that drives it, tip, then current and voltage of each mode. */
function energyUnits({ primary, modes, load }: Network): number[] {
  const current = (inductance: number) => 1 / Math.sqrt(inductance);
  const voltage = (capacitance: number) => 1 / Math.sqrt(capacitance);
  return [
    current(primary.inductance),
    voltage(primary.capacitance),
    voltage(load?.capacitance ?? 1),
    ...modes.flatMap(({ inductance, capacitance }) => [current(inductance), voltage(capacitance)]),
  ];
}

const PATH = { resistance: 0, railCapacitance: Number.POSITIVE_INFINITY };

/** A spark that damps the secondary to a quality of ten or so, as a long one does. */
function withLoad(of: Network): Network {
  const reactance = Math.sqrt(of.modes[0].inductance / of.modes[0].capacitance);
  const load = of.load ?? { capacitance: 4e-12, topology: "series" };
  return { ...of, load: { ...load, resistance: 10 * reactance } };
}

/** The network without a spark, its primary at a part of the fundamental's frequency, and with one overtone. */
function withOvertone(
  { primary, modes: [fundamental] }: Network,
  detuning: number,
  coupling: number,
  overtone: { ratio: number; coupling: number },
): Network {
  const { inductance } = fundamental;
  const mutual = (part: number, of: number) => part * Math.sqrt(primary.inductance * of);
  const higher = inductance / overtone.ratio ** 2;
  return {
    primary: {
      ...primary,
      capacitance: (inductance * fundamental.capacitance) / (primary.inductance * detuning ** 2),
    },
    modes: [
      { ...fundamental, mutual: mutual(coupling, inductance) },
      { ...fundamental, inductance: higher, mutual: mutual(overtone.coupling, higher) },
    ],
    load: null,
  };
}

describe("the poles", () => {
  it("are eigenvalues of the state matrix, with and without a spark", () => {
    fc.assert(
      fc.property(network, (of) => {
        for (const one of [{ ...of, load: null }, withLoad(of)]) {
          const found = polePair(one);
          const all = eigenvalues(conductingSystem(one, PATH), one);
          for (const pole of [found?.lower, found?.upper]) {
            const nearest = all.find(
              ({ frequency }) => Math.abs(frequency / (pole?.frequency ?? 0) - 1) < 1e-7,
            );
            expect(nearest, JSON.stringify({ pole, all })).toBeDefined();
            expect(pole!.qualityFactor / nearest!.qualityFactor).toBeCloseTo(1, 4);
          }
        }
      }),
      runs(150, 20_240_517),
    );
  });

  it("are the two lowest ones of the network without a spark", () => {
    fc.assert(
      fc.property(network, (of) => {
        const bare = { ...of, load: null };
        const found = polePair(bare)!;
        const [lower, upper] = eigenvalues(conductingSystem(bare, PATH), bare);
        expect(found.lower.frequency / lower.frequency).toBeCloseTo(1, 7);
        expect(found.upper.frequency / upper.frequency).toBeCloseTo(1, 7);
      }),
      runs(150, 20_240_517),
    );
  });

  it.each([1.9, 2.2])(
    "are the two lowest ones with an overtone at %d times the fundamental, strongly coupled",
    (ratio) => {
      const [drawn] = fc.sample(network, { seed: 20_240_517, numRuns: 1 });
      for (const detuning of [0.8, 1, 1.2, 1.35])
        for (const coupling of [0.05, 0.15, 0.25, 0.3])
          for (const overtone of [-0.3, 0.3]) {
            const of = withOvertone(drawn, detuning, coupling, { ratio, coupling: overtone });
            const found = polePair(of)!;
            const [lower, upper] = eigenvalues(conductingSystem(of, PATH), of);
            expect(found.lower.frequency / lower.frequency).toBeCloseTo(1, 7);
            expect(found.upper.frequency / upper.frequency).toBeCloseTo(1, 7);
          }
    },
  );

  it("of the secondary alone are eigenvalues of the state matrix with the primary open", () => {
    fc.assert(
      fc.property(network, (of) => {
        const loaded = withLoad(of);
        const pole = secondaryPole(loaded);
        const all = eigenvalues(openSystem(loaded), loaded);
        expect(pole).not.toBeNull();
        expect(all.some(({ frequency }) => Math.abs(frequency / pole!.frequency - 1) < 1e-7)).toBe(true);
      }),
      runs(150, 20_240_517),
    );
  });

  it("are none where a load lets the secondary only creep back", () => {
    fc.assert(
      fc.property(network, (of) => {
        const reactance = Math.sqrt(of.modes[0].inductance / of.modes[0].capacitance);
        const load = { capacitance: 1e-12, resistance: 0.05 * reactance, topology: "parallel" as const };
        for (const pole of [secondaryPole({ ...of, load }), polePair({ ...of, load })?.lower ?? null])
          if (pole) expect(pole.frequency).toBeGreaterThan(0.1 * primaryFrequency(of));
      }),
      runs(100, 20_240_517),
    );
  });

  it("move apart as the coupling rises", () => {
    fc.assert(
      fc.property(network, fc.double({ min: 1.05, max: 1.6, noNaN: true }), (of, factor) => {
        const bare = { ...of, load: null };
        const closer = { ...bare, modes: [{ ...bare.modes[0], mutual: bare.modes[0].mutual * factor }] };
        const [a, b] = [polePair({ ...bare, modes: [bare.modes[0]] })!, polePair(closer)!];
        expect(b.upper.frequency - b.lower.frequency).toBeGreaterThan(a.upper.frequency - a.lower.frequency);
      }),
      runs(100, 20_240_517),
    );
  });

  it("lose quality as any resistance rises", () => {
    fc.assert(
      fc.property(network, fc.double({ min: 1.1, max: 3, noNaN: true }), (of, factor) => {
        const bare = { ...of, load: null };
        const lossy: Network = {
          ...bare,
          primary: { ...bare.primary, resistance: bare.primary.resistance * factor },
          modes: bare.modes.map((mode) => ({ ...mode, resistance: mode.resistance * factor })),
        };
        const [a, b] = [polePair(bare)!, polePair(lossy)!];
        expect(b.lower.qualityFactor).toBeLessThan(a.lower.qualityFactor);
        expect(b.upper.qualityFactor).toBeLessThan(a.upper.qualityFactor);
      }),
      runs(100, 20_240_517),
    );
  });

  it("stay finite without coupling, without a load and with a very large one", () => {
    const loads = [
      null,
      { resistance: 1e-3, capacitance: 1e-6, topology: "series" as const },
      { resistance: 1e12, capacitance: 1e-6, topology: "parallel" as const },
    ];
    fc.assert(
      fc.property(network, fc.constantFrom(...loads), (of, load) => {
        const apart = { ...of, load, modes: of.modes.map((mode) => ({ ...mode, mutual: 0 })) };
        for (const one of [apart, { ...of, load }]) {
          const pair = polePair(one);
          for (const pole of pair ? [pair.lower, pair.upper] : []) {
            expect(pole.frequency).toBeGreaterThan(0);
            expect(Number.isNaN(pole.qualityFactor)).toBe(false);
          }
        }
      }),
      runs(100, 20_240_517),
    );
  });

  it("without coupling are the resonances of primary and secondary", () => {
    fc.assert(
      fc.property(network, (of) => {
        const apart = { ...of, load: null, modes: [{ ...of.modes[0], mutual: 0 }] };
        const { inductance, capacitance } = of.modes[0];
        const own = [primaryFrequency(of), 1 / (2 * Math.PI * Math.sqrt(inductance * capacitance))];
        fc.pre(Math.abs(own[0] / own[1] - 1) > 0.01);
        const { lower, upper } = polePair(apart)!;
        expect(lower.frequency / Math.min(...own)).toBeCloseTo(1, 3);
        expect(upper.frequency / Math.max(...own)).toBeCloseTo(1, 3);
      }),
      runs(100, 20_240_517),
    );
  });
});
