/** Stress of the tank's capacitors, and arrangements of units for a wanted bank. */
import { type BurstResult, meanFrequency, rmsOfBursts } from "../burst/burstResult";
import type { CapacitorUnit, Tank } from "../design-parts";

/** How many of which unit a bank is made of. */
type BankParts = Pick<Tank, "unit" | "unitsInSeries" | "strings">;

/** The duty of a bank. */
export interface BankDuty {
  /** V and A, magnitudes, of the whole bank */
  peakVoltage: number;
  peakCurrent: number;
  /** A, over time as well as bursts */
  rmsCurrent: number;
  /** Hz, at which the current flows */
  frequency: number;
}

export interface UnitStress {
  /** V */
  peakVoltage: number;
  /** V over the bursts' and pauses' time, of a sine at the frequency */
  rmsVoltage: number;
  /** A */
  peakCurrent: number;
  rmsCurrent: number;
  /** W, of one unit */
  loss: number;
  /** limit over stress: above 1 is within the data sheet; null if there is no stress */
  voltageMargin: number | null;
  peakCurrentMargin: number | null;
  rmsCurrentMargin: number | null;
}

/** F of equal units, `strings` in parallel of `unitsInSeries`. */
export function bankCapacitance({ unit, unitsInSeries, strings }: BankParts): number {
  return (unit.capacitance * strings) / unitsInSeries;
}

/** Units of a bank. */
export function unitCount({ unitsInSeries, strings }: Pick<BankParts, "unitsInSeries" | "strings">): number {
  return unitsInSeries * strings;
}

/** V of a bank by its units' direct rating, shared equally. */
export function bankVoltageRating({
  unit,
  unitsInSeries,
}: Pick<BankParts, "unit" | "unitsInSeries">): number {
  return unit.dcVoltage * unitsInSeries;
}

/** A, pulse rating of a bank, shared equally by its strings. */
export function bankPeakCurrentRating({ unit, strings }: Pick<BankParts, "unit" | "strings">): number {
  return unit.peakCurrent * strings;
}

/** Ω in series at a frequency: tan δ/(2πfC). */
export function dissipationResistance(
  { capacitance, dissipationFactor }: CapacitorUnit,
  frequency: number,
): number {
  return frequency > 0 ? dissipationFactor / (2 * Math.PI * frequency * capacitance) : 0;
}

function margin(limit: number, stress: number): number | null {
  return stress > 0 ? limit / stress : null;
}

/**
 * Stress of one unit of a bank of equal ones, which share voltage and current equally.
 * Source: circuit theory, U = I/(2πfC), P = I²·tan δ/(2πfC).
 */
export function unitStress({ unit, unitsInSeries, strings }: BankParts, duty: BankDuty): UnitStress {
  const peakVoltage = duty.peakVoltage / unitsInSeries;
  const peakCurrent = duty.peakCurrent / strings;
  const rmsCurrent = duty.rmsCurrent / strings;
  const reactance = duty.frequency > 0 ? 1 / (2 * Math.PI * duty.frequency * unit.capacitance) : 0;
  return {
    peakVoltage,
    rmsVoltage: rmsCurrent * reactance,
    peakCurrent,
    rmsCurrent,
    loss: rmsCurrent ** 2 * dissipationResistance(unit, duty.frequency),
    voltageMargin: margin(unit.dcVoltage, peakVoltage),
    peakCurrentMargin: margin(unit.peakCurrent, peakCurrent),
    rmsCurrentMargin: margin(unit.rmsCurrent, rmsCurrent),
  };
}

export interface ArrangementWish {
  /** F */
  capacitance: number;
  /** relative difference from it that passes */
  tolerance: number;
  /** of a bank with just that capacitance */
  duty: BankDuty;
  /** least limit over stress */
  margin: number;
  /** price of one unit, in any currency; null if not given */
  unitCost: number | null;
}

export interface Arrangement {
  unitsInSeries: number;
  strings: number;
  units: number;
  /** F */
  capacitance: number;
  /** relative, from the wanted one */
  deviation: number;
  stress: UnitStress;
  cost: number | null;
}

const MOST_IN_SERIES = 40;
const MOST_UNITS = 400;

/** The same charge swings a bank of another capacitance to another voltage. */
function dutyAt(
  { duty, capacitance: known }: Pick<ArrangementWish, "duty" | "capacitance">,
  capacitance: number,
): BankDuty {
  return { ...duty, peakVoltage: (duty.peakVoltage * known) / capacitance };
}

function arrangement(
  unit: CapacitorUnit,
  wish: ArrangementWish,
  unitsInSeries: number,
  strings: number,
): Arrangement {
  const bank = { unit, unitsInSeries, strings };
  const capacitance = bankCapacitance(bank);
  const units = unitCount(bank);
  return {
    unitsInSeries,
    strings,
    units,
    capacitance,
    deviation: capacitance / wish.capacitance - 1,
    stress: unitStress(bank, dutyAt(wish, capacitance)),
    cost: wish.unitCost === null ? null : wish.unitCost * units,
  };
}

function passes({ deviation, units, stress }: Arrangement, { tolerance, margin }: ArrangementWish): boolean {
  const margins = [stress.voltageMargin, stress.peakCurrentMargin, stress.rmsCurrentMargin];
  const within = margins.every((each) => each === null || each >= margin);
  return units <= MOST_UNITS && Math.abs(deviation) <= tolerance && within;
}

/** Arrangements of a unit that make a wanted bank within every margin, fewest units first. */
export function proposeArrangements(unit: CapacitorUnit, wish: ArrangementWish): Arrangement[] {
  return Array.from({ length: MOST_IN_SERIES }, (_, index) => index + 1)
    .flatMap((unitsInSeries) => {
      const strings = (wish.capacitance * unitsInSeries) / unit.capacitance;
      const counts = new Set([Math.max(1, Math.floor(strings)), Math.ceil(strings)]);
      return [...counts].map((count) => arrangement(unit, wish, unitsInSeries, count));
    })
    .filter((each) => passes(each, wish))
    .sort((a, b) => a.units - b.units || Math.abs(a.deviation) - Math.abs(b.deviation));
}

/** Relative difference from the wanted capacitance that passes: the tap takes it up. */
const CAPACITANCE_TOLERANCE = 0.05;
/** Least limit over stress of a proposal; common practice, no source. */
const MARGIN = 1.2;
const MOST_PROPOSALS = 6;

/** Banks of a tank's own unit that keep every margin under the duty of the present bank, fewest units first. */
export function proposedBanks(tank: Tank, duty: BankDuty): Arrangement[] {
  const present = bankCapacitance(tank);
  const capacitance = tank.wantedCapacitance ?? present;
  return proposeArrangements(tank.unit, {
    capacitance,
    tolerance: CAPACITANCE_TOLERANCE,
    duty: dutyAt({ duty, capacitance: present }, capacitance),
    margin: MARGIN,
    unitCost: tank.unitCost,
  }).slice(0, MOST_PROPOSALS);
}

/** The duty of a bank with repeated bursts; without a full cycle, at the primary's own resonance in Hz. */
export function bankDuty(burst: BurstResult, repetitionRate: number, resonance: number): BankDuty {
  return {
    peakVoltage: burst.peakBankVoltage,
    peakCurrent: burst.peakPrimaryCurrent.value,
    rmsCurrent: rmsOfBursts(burst.squareCurrentTime, repetitionRate),
    frequency: meanFrequency(burst) ?? resonance,
  };
}
