import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BurstDrive } from "../../../src/calc/burst/burstDrive";
import type { BurstResult } from "../../../src/calc/burst/burstResult";
import { longestOnTime, simulateBurst } from "../../../src/calc/burst/stepper";
import type { Network } from "../../../src/calc/circuit/network";
import { runs } from "../../properties";
import { network, networkAndDrive, STIFF_DRIVE } from "../circuit/drivenNetworks";

const coil: Network = {
  primary: { inductance: 1.2e-5, capacitance: 1.7e-7, resistance: 0.04 },
  modes: [
    { inductance: 0.117, capacitance: 1.8e-11, resistance: 320, mutual: 1.8e-4 },
    { inductance: 0.032, capacitance: 9e-12, resistance: 240, mutual: -3e-5 },
  ],
  load: { resistance: 2.2e5, capacitance: 3.5e-12, topology: "series" },
};

const drive: BurstDrive = {
  ...STIFF_DRIVE,
  reservoirCapacitance: 3.3e-3,
  reservoirSeriesResistance: 0.02,
  onStateVoltage: 1,
  onStateResistance: 4.5e-3,
  commutation: {
    mode: "primary current",
    leadTime: 5.5e-7,
    delay: 2.5e-7,
    deadTime: 2e-7,
    frequency: null,
  },
};

const fixedFrequency = { ...drive.commutation, mode: "fixed frequency" as const, frequency: 105e3 };

function burst(part: Partial<BurstDrive> = {}, of: Network = coil): BurstResult {
  const result = simulateBurst(of, { ...drive, ...part });
  if (!result) throw new Error("the burst was refused");
  return result;
}

function numbersOf(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(numbersOf) : [];
}

function expectSensible(result: BurstResult): void {
  expect(result.cutShort).toBe(false);
  expect(numbersOf(result).every(Number.isFinite)).toBe(true);
  const { imbalance, supplied } = result.energy;
  expect(Math.abs(imbalance)).toBeLessThanOrEqual(1e-3 * supplied);
}

describe("a burst", () => {
  it("accounts for its energy to 0.1 % in any network, with any drive", () => {
    fc.assert(
      fc.property(networkAndDrive, ({ network, drive }) => {
        expectSensible(simulateBurst(network, drive)!);
      }),
      runs(80, 20_240_517),
    );
  });

  it("accounts for its energy while the spark grows", () => {
    fc.assert(
      fc.property(networkAndDrive, ({ network, drive }) => {
        const growth = { breakoutVoltage: 2e4, rate: 4000, length: 0.7 };
        expectSensible(simulateBurst(network, drive, { growth })!);
      }),
      runs(80, 20_240_517),
    );
  });

  it("has no loss below zero", () => {
    fc.assert(
      fc.property(networkAndDrive, ({ network, drive }) => {
        const { imbalance: _, ...energy } = simulateBurst(network, drive)!.energy;
        for (const joules of Object.values(energy)) expect(joules).toBeGreaterThanOrEqual(0);
      }),
      runs(100, 20_240_517),
    );
  });

  it("doubles every current and voltage with twice the bus, and quadruples the energy", () => {
    fc.assert(
      fc.property(network, (of) => {
        const [one, two] = [325, 650].map((busVoltage) => simulateBurst(of, { ...STIFF_DRIVE, busVoltage })!);
        expect(two.peakPrimaryCurrent.value / one.peakPrimaryCurrent.value).toBeCloseTo(2, 6);
        expect(two.peakTopVoltage.value / one.peakTopVoltage.value).toBeCloseTo(2, 6);
        expect(two.energy.supplied / one.energy.supplied).toBeCloseTo(4, 5);
      }),
      runs(100, 20_240_517),
    );
  });

  it("drives half as hard with a half bridge on a stiff bus", () => {
    const stiff = { reservoirCapacitance: Number.POSITIVE_INFINITY, onStateVoltage: 0, onStateResistance: 0 };
    const [full, half] = [burst(stiff), burst({ ...stiff, bridge: "half", reservoirSeriesResistance: 0.04 })];
    expect(half.peakPrimaryCurrent.value / full.peakPrimaryCurrent.value).toBeCloseTo(0.5, 6);
  });

  it("lowers the bus by the charge that it takes", () => {
    const { energy, reservoirSag } = burst();
    const left = drive.busVoltage - reservoirSag;
    const taken = 0.5 * drive.reservoirCapacitance * (drive.busVoltage ** 2 - left ** 2);
    expect(taken).toBeGreaterThan(energy.supplied - energy.returned);
    expect(taken).toBeLessThan(1.1 * energy.supplied);
  });

  it("turns each pair off near the current's zero, with a lead as long as the delay", () => {
    const late = burst({ commutation: { ...drive.commutation, leadTime: 0 } });
    const timely = burst({ commutation: { ...drive.commutation, leadTime: drive.commutation.delay } });
    const mean = ({ turnOffs, peakPrimaryCurrent }: BurstResult) =>
      turnOffs.slice(0, -1).reduce((sum, { current }) => sum + Math.abs(current), 0) /
      (turnOffs.length - 1) /
      peakPrimaryCurrent.value;
    expect(mean(timely)).toBeLessThan(0.02);
    expect(mean(late)).toBeGreaterThan(5 * mean(timely));
    expect(late.turnOffs[3].current).toBeLessThan(0);
  });

  it("keeps one pair on at a time, a dead time apart", () => {
    const { gates } = burst();
    gates.slice(1).forEach(({ from, polarity }, index) => {
      expect(from - gates[index].to).toBeGreaterThanOrEqual(drive.commutation.deadTime * (1 - 1e-6));
      expect(polarity).toBe(-gates[index].polarity);
    });
  });

  it("says how fast it runs, cycle by cycle, and when the drive ended", () => {
    const { runningFrequency, driveEnd } = burst();
    expect(runningFrequency.length).toBeGreaterThan(5);
    for (const { frequency } of runningFrequency) {
      expect(frequency).toBeGreaterThan(80e3);
      expect(frequency).toBeLessThan(150e3);
    }
    expect(driveEnd).toBeCloseTo(drive.onTime, 12);
  });

  it("runs at the frequency that is fixed", () => {
    const { gates } = burst({ commutation: fixedFrequency });
    expect(gates[2].from - gates[0].from).toBeCloseTo(1 / 105e3 + drive.commutation.deadTime, 12);
    expect(gates[4].from - gates[2].from).toBeCloseTo(1 / 105e3, 12);
  });

  it("takes a current that stops and goes on the same way for one swing", () => {
    const commutation = { ...fixedFrequency, deadTime: 2e-6 };
    for (const { frequency } of burst({ commutation }).runningFrequency.slice(2)) {
      expect(frequency).toBeGreaterThan(95e3);
      expect(frequency).toBeLessThan(116e3);
    }
  });

  it("returns energy through the diodes after the on-time", () => {
    const { energy, primaryEnd, driveEnd } = burst();
    expect(energy.returned).toBeGreaterThan(0);
    expect(primaryEnd).toBeGreaterThan(driveEnd);
  });
});

describe("a burst without its waveform", () => {
  it("says the same of everything else", () => {
    fc.assert(
      fc.property(networkAndDrive, ({ network, drive }) => {
        const [whole, bare] = [{}, { waveform: false }].map(
          (options) => simulateBurst(network, drive, options)!,
        );
        expect(bare.waveform.time).toHaveLength(0);
        expect(bare.halfCycles).toEqual(whole.halfCycles);
        expect(bare.peakPrimaryCurrent).toEqual(whole.peakPrimaryCurrent);
        expect(bare.peakTopVoltage.value / whole.peakTopVoltage.value).toBeCloseTo(1, 3);
        expect(bare.peakBaseCurrent / whole.peakBaseCurrent).toBeCloseTo(1, 3);
        expect(Math.abs(bare.energy.spark - whole.energy.spark)).toBeLessThan(1e-3 * whole.energy.supplied);
      }),
      runs(25, 20_240_517),
    );
  });
});

/** After the drive the secondary may push the current up again, through the diodes. */
function drivenPeak({ halfCycles }: BurstResult): number {
  return Math.max(...halfCycles.filter(({ driven }) => driven).map(({ peakCurrent }) => peakCurrent));
}

describe("the over-current limit", () => {
  const commutation = { ...drive.commutation, delay: 0, leadTime: 0 };

  it("ends the burst where the current first reaches it", () => {
    const result = burst({ commutation, overCurrentLimit: 300 });
    expect(result.limitReachedAt).not.toBeNull();
    expect(result.driveEnd).toBeCloseTo(result.limitReachedAt!, 12);
    expect(Math.abs(result.turnOffs.at(-1)!.current)).toBeCloseTo(300, 3);
  });

  it("does not stop the current at once: the tank's own voltage drives it on", () => {
    const peak = drivenPeak(burst({ commutation, overCurrentLimit: 300 }));
    expect(peak).toBeGreaterThan(300);
    expect(peak).toBeLessThan(330);
  });

  it("is acted on a delay later", () => {
    const result = burst({ overCurrentLimit: 300 });
    expect(result.driveEnd - result.limitReachedAt!).toBeCloseTo(drive.commutation.delay, 10);
    expect(result.peakPrimaryCurrent.value).toBeGreaterThan(300);
  });

  it("ends the half cycle alone where that is asked, and the burst goes on below it", () => {
    const result = burst({ commutation, overCurrentLimit: 300, overCurrentAction: "end half cycle" });
    expect(result.driveEnd).toBeCloseTo(drive.onTime, 10);
    expect(result.limitReachedAt).toBeLessThan(drive.onTime / 2);
    expect(drivenPeak(result)).toBeLessThan(330);
    expectSensible(result);
  });

  it("is found in a peak that no step falls on", () => {
    const { value } = burst({ commutation }).halfCycles.map((half) => ({ value: half.peakCurrent }))[3];
    const result = burst({ commutation, overCurrentLimit: value * (1 - 1e-6) });
    expect(result.limitReachedAt).not.toBeNull();
    expect(result.limitReachedAt!).toBeLessThan(4.2e-5);
  });

  it("below the first peak ends the burst within its first half cycle", () => {
    const result = burst({ overCurrentLimit: 1 });
    expect(result.gates).toHaveLength(1);
    expectSensible(result);
  });
});

describe("a burst of an odd kind", () => {
  it.each<[string, Partial<BurstDrive>, Partial<Network>]>([
    ["no on-time", { onTime: 0 }, {}],
    ["no bus voltage", { busVoltage: 0 }, {}],
    ["a bus below the switches' drop", { busVoltage: 1 }, {}],
    ["no coupling", {}, { modes: coil.modes.map((mode) => ({ ...mode, mutual: 0 })) }],
    ["no spark", {}, { load: null }],
    ["a shorted spark", {}, { load: { resistance: 0, capacitance: 3e-12, topology: "series" } }],
    [
      "a top that is shorted to ground",
      {},
      { load: { resistance: 0, capacitance: 3e-12, topology: "parallel" } },
    ],
    ["a spark without capacitance", {}, { load: { resistance: 2e5, capacitance: 0, topology: "series" } }],
    ["a limit of zero", { overCurrentLimit: 0 }, {}],
    ["a lead longer than a half cycle", { commutation: { ...drive.commutation, leadTime: 2e-5 } }, {}],
    ["a delay longer than a half cycle", { commutation: { ...drive.commutation, delay: 2e-5 } }, {}],
    ["a dead time longer than a half cycle", { commutation: { ...drive.commutation, deadTime: 2e-5 } }, {}],
    ["a dead time longer than the clock's half", { commutation: { ...fixedFrequency, deadTime: 2e-5 } }, {}],
    ["a clock without a frequency", { commutation: { ...fixedFrequency, frequency: null } }, {}],
    ["a clock that stands", { commutation: { ...fixedFrequency, frequency: 0 } }, {}],
    ["a reservoir that is soon empty", { reservoirCapacitance: 1e-6 }, {}],
    ["no secondary", {}, { modes: [], load: null }],
    ["no resistance anywhere", { onStateResistance: 0, reservoirSeriesResistance: 0 }, lossless()],
  ])("stays sensible: %s", (_, part, of) => {
    expectSensible(burst(part, { ...coil, ...of }));
  });

  it.each([0.05, 0.4, 1.3, 2.3, 3.3])(
    "turns on, after a dead time of %f halves of the clock, the pair of the half that the clock began then",
    (halves) => {
      const half = 1 / (2 * fixedFrequency.frequency);
      const deadTime = halves * half;
      const { gates } = burst({ commutation: { ...fixedFrequency, deadTime } });
      expect(gates.length).toBeGreaterThan(2);
      expect(gates[0].polarity).toBe(1);
      // the first comes on without a dead time
      for (const { polarity, from } of gates.slice(1)) {
        const began = Math.round((from - deadTime) / half);
        expect(from).toBeCloseTo(began * half + deadTime, 12);
        expect(polarity).toBe(began % 2 === 0 ? 1 : -1);
      }
    },
  );

  it("with no on-time has nothing in it", () => {
    const result = burst({ onTime: 0 });
    expect(result.gates).toHaveLength(0);
    expect(result.peakPrimaryCurrent.value).toBe(0);
    expect(result.energy.supplied).toBe(0);
  });

  it("is refused where the couplings are impossible", () => {
    const modes = [{ ...coil.modes[0], mutual: 1.3e-3 }];
    expect(simulateBurst({ ...coil, modes }, drive)).toBeNull();
  });

  it("is refused where a capacitance is none", () => {
    const modes = [{ ...coil.modes[0], capacitance: 0 }];
    expect(simulateBurst({ ...coil, modes }, drive)).toBeNull();
    expect(simulateBurst(coil, { ...drive, reservoirCapacitance: 0 })).toBeNull();
  });
});

function lossless(): Partial<Network> {
  return {
    primary: { ...coil.primary, resistance: 0 },
    modes: coil.modes.map((mode) => ({ ...mode, resistance: 0 })),
    load: null,
  };
}

describe("a spark that grows with the burst", () => {
  it("loads nothing before the breakout", () => {
    const growth = { breakoutVoltage: 1e9, rate: 5000, length: 0.7 };
    const [grown, bare] = [simulateBurst(coil, drive, { growth })!, burst({}, { ...coil, load: null })];
    expect(grown.peakTopVoltage.value).toBeCloseTo(bare.peakTopVoltage.value, 3);
    expect(grown.energy.spark).toBe(0);
  });

  it("breaks out where each pair comes on at the very zero of the current", () => {
    const commutation = { ...drive.commutation, leadTime: 0, delay: 0, deadTime: 0 };
    const growth = { breakoutVoltage: 1e5, rate: 5000, length: 0.7 };
    expect(simulateBurst(coil, { ...drive, commutation }, { growth })!.energy.spark).toBeGreaterThan(0);
  });

  it("takes less than one that stands from the start, more than none", () => {
    const growth = { breakoutVoltage: 1e5, rate: 5000, length: 0.7 };
    const grown = simulateBurst(coil, drive, { growth })!;
    expect(grown.energy.spark).toBeGreaterThan(0);
    expect(grown.energy.spark).toBeLessThan(burst().energy.spark);
  });

  it("is not followed over more cycles than its steps are bounded for", () => {
    const most = longestOnTime(coil);
    expect(most).toBeGreaterThan(1e-3);
    expect(simulateBurst(coil, { ...drive, onTime: most * 1.001 })).toBeNull();
    const small = {
      ...coil,
      modes: coil.modes.map((mode) => ({ ...mode, capacitance: mode.capacitance / 100 })),
    };
    expect(longestOnTime(small)).toBeLessThan(most);
  });
});
