import { describe, expect, it } from "vitest";
import { rmsOfBursts } from "../../../src/calc/burst/burstResult";
import { simulateBurst } from "../../../src/calc/burst/stepper";
import {
  bankCapacitance,
  bankPeakCurrentRating,
  bankVoltageRating,
  dissipationResistance,
  proposeArrangements,
  unitCount,
  unitStress,
} from "../../../src/calc/circuit/bank";
import type { CapacitorUnit } from "../../../src/calc/design-parts";
import { STIFF_DRIVE } from "./drivenNetworks";

const unit: CapacitorUnit = {
  capacitance: 2e-7,
  dcVoltage: 2000,
  rmsCurrent: 17,
  peakCurrent: 380,
  dissipationFactor: 7e-4,
};

const duty = { peakVoltage: 6000, peakCurrent: 480, rmsCurrent: 20, frequency: 1e5 };

describe("a unit of the bank", () => {
  it("carries its share of voltage and current", () => {
    const stress = unitStress({ unit, unitsInSeries: 6, strings: 3 }, duty);
    expect(stress.peakVoltage).toBe(1000);
    expect(stress.peakCurrent).toBe(160);
    expect(stress.voltageMargin).toBe(2);
    expect(stress.peakCurrentMargin).toBeCloseTo(2.375, 12);
  });

  it("is heated by tan δ times its reactive power", () => {
    const stress = unitStress({ unit, unitsInSeries: 6, strings: 3 }, duty);
    expect(stress.loss).toBeCloseTo(7e-4 * stress.rmsVoltage * stress.rmsCurrent, 12);
    expect(dissipationResistance(unit, 1e5)).toBeCloseTo(5.57e-3, 5);
  });

  it("has no margins where nothing flows", () => {
    const stress = unitStress(
      { unit, unitsInSeries: 1, strings: 1 },
      { peakVoltage: 0, peakCurrent: 0, rmsCurrent: 0, frequency: 0 },
    );
    expect(stress.loss).toBe(0);
    expect(stress.voltageMargin).toBeNull();
  });
});

describe("a bank of equal units", () => {
  it.each([
    [1, 1],
    [6, 3],
    [2, 5],
  ])("of %i in series and %i strings holds what its units hold at their rating", (unitsInSeries, strings) => {
    const bank = { unit, unitsInSeries, strings };
    const ofOne = 0.5 * unit.capacitance * unit.dcVoltage ** 2;
    const ofBank = 0.5 * bankCapacitance(bank) * bankVoltageRating(bank) ** 2;
    expect(ofBank / (unitCount(bank) * ofOne)).toBeCloseTo(1, 12);
    expect(bankPeakCurrentRating(bank)).toBe(strings * 380);
  });
});

describe("the RMS current", () => {
  // standard waveforms: a sine of amplitude Î has RMS Î/√2; in bursts of a duty D, Î·√(D/2)
  it("of one whole period of a sine, repeated, is Î·√(duty/2)", () => {
    const primary = { inductance: 1e-5, capacitance: 1e-7, resistance: 0 };
    const period = 2 * Math.PI * Math.sqrt(1e-12);
    const commutation = { ...STIFF_DRIVE.commutation, mode: "fixed frequency" as const };
    const drive = { ...STIFF_DRIVE, onStateResistance: 0, commutation, onTime: period };
    const { squareCurrentTime, peakPrimaryCurrent } = simulateBurst(
      { primary, modes: [], load: null },
      drive,
    )!;
    expect(peakPrimaryCurrent.value / 32.5).toBeCloseTo(1, 4); // U/√(L/C)
    const rms = rmsOfBursts(squareCurrentTime, 0.05 / period);
    expect(rms / (32.5 * Math.sqrt(0.05 / 2))).toBeCloseTo(1, 4);
  });
});

describe("proposed arrangements", () => {
  const wish = { capacitance: 1e-7, tolerance: 0.05, duty, margin: 1.25, unitCost: 3 };

  it("make the wanted capacitance within every margin, fewest units first", () => {
    const table = proposeArrangements(unit, wish);
    expect(table.length).toBeGreaterThan(0);
    for (const { deviation, stress, units, unitsInSeries, strings, cost } of table) {
      expect(units).toBe(unitsInSeries * strings);
      expect(Math.abs(deviation)).toBeLessThanOrEqual(0.05);
      expect(stress.voltageMargin).toBeGreaterThanOrEqual(1.25);
      expect(stress.rmsCurrentMargin).toBeGreaterThanOrEqual(1.25);
      expect(cost).toBe(3 * units);
    }
    expect(table.map(({ units }) => units)).toEqual(table.map(({ units }) => units).sort((a, b) => a - b));
  });

  it("are none where no arrangement will do", () => {
    expect(proposeArrangements(unit, { ...wish, duty: { ...duty, peakVoltage: 1e6 } })).toEqual([]);
  });

  it("have no cost where none is given", () => {
    expect(proposeArrangements(unit, { ...wish, unitCost: null })[0].cost).toBeNull();
  });
});
