/** Charging, discharging and heating of the reservoir. */

/** V of direct current, safe-to-touch limit in dry rooms. Source: iec61010, 6.3.1, normal condition. */
export const SAFE_VOLTAGE = 60;

export interface Discharge {
  /** s until the bus is at the safe voltage; 0 where it is never above, Infinity without a resistor */
  timeToSafe: number;
  /** W in the resistor at the full bus voltage */
  power: number;
  /** J at the full bus voltage */
  energy: number;
}

/**
 * Discharge of a reservoir through its resistor.
 * Source: circuit theory, t = RC·ln(U/60 V), P = U²/R.
 * @param voltage V, of the bus
 * @param resistance Ω; Infinity for none
 */
export function discharge(capacitance: number, voltage: number, resistance: number): Discharge {
  return {
    timeToSafe: voltage > SAFE_VOLTAGE ? resistance * capacitance * Math.log(voltage / SAFE_VOLTAGE) : 0,
    power: voltage ** 2 / resistance,
    energy: 0.5 * capacitance * voltage ** 2,
  };
}

/**
 * Largest current into an empty capacitance from a steady voltage through a resistance and an inductance:
 * the step response of a series circuit at its first maximum.
 * Source: circuit theory, underdamped t = atan(ω/α)/ω, overdamped likewise with atanh.
 * @returns A; Infinity for an ideal source
 */
export function inrushPeak(
  voltage: number,
  resistance: number,
  inductance: number,
  capacitance: number,
): number {
  if (inductance <= 0) return voltage / resistance;
  const decay = resistance / (2 * inductance);
  const square = 1 / (inductance * capacitance) - decay * decay;
  const omega = Math.sqrt(Math.abs(square));
  if (omega < 1e-6 * decay) return voltage / (inductance * decay * Math.E);
  const time = (square > 0 ? Math.atan2(omega, decay) : Math.atanh(omega / decay)) / omega;
  const rise = square > 0 ? Math.sin(omega * time) : Math.sinh(omega * time);
  return (voltage / (inductance * omega)) * Math.exp(-decay * time) * rise;
}

export interface Precharge {
  /** A at the mains' crest */
  peakCurrent: number;
  /** s to 95 % of the full voltage from a steady source: from rectified mains it takes longer */
  time: number;
  /** J that the resistor takes: as much as the reservoir stores */
  energy: number;
}

/**
 * Charging an empty reservoir through a resistor, part after part where a rectifier charges parts in turns.
 * @param turns parts of the reservoir that are charged in turns
 */
export function prechargeInTurns(
  { capacitance, voltage, turns }: { capacitance: number; voltage: number; turns: number },
  resistance: number,
): Pick<Precharge, "peakCurrent" | "time"> {
  const { peakCurrent, time } = precharge(capacitance, voltage, resistance);
  return { peakCurrent, time: turns * time };
}

/** Charging an empty reservoir through a resistor, from a steady voltage. Source: circuit theory, 3RC. */
export function precharge(capacitance: number, voltage: number, resistance: number): Precharge {
  return {
    peakCurrent: voltage / resistance,
    time: resistance * capacitance * Math.log(20),
    energy: 0.5 * capacitance * voltage ** 2,
  };
}

/**
 * RMS current of the reservoir, A: the alternating parts of the rectifier's pulses and of the bursts,
 * added as squares because they are uncorrelated.
 * @param rectifier A, RMS and mean, out of it
 * @param burst A²s of the current of one burst, and the part of its half cycles that loads one and the same capacitor
 */
export function reservoirRmsCurrent(
  rectifier: { rmsCurrent: number; meanCurrent: number },
  burst: { squareTime: number; share: number },
  repetitionRate: number,
): number {
  const meanSquare = rectifier.meanCurrent ** 2;
  const charging = Math.max(rectifier.rmsCurrent ** 2 - meanSquare, 0);
  const bursts = Math.max(burst.share * burst.squareTime * repetitionRate - meanSquare, 0);
  return Math.sqrt(charging + bursts);
}

/** A; preferred fuse ratings. Source: iec60269. */
const FUSE_RATINGS = [2, 4, 6, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250];

/**
 * Preferred fuse rating above 1.25 times the mains current, a hint for the licensed person who decides. Null
 * beyond the list. Source: common practice, no source, for the factor.
 */
export function fuseHint(mainsCurrent: number): number | null {
  return FUSE_RATINGS.find((rating) => rating >= 1.25 * mainsCurrent) ?? null;
}

/** A, the fuse hint if it is not above the circuit's own rating, otherwise null, because it would be of no use. */
export function fuseHintWithin(circuitCurrent: number, mainsCurrent: number): number | null {
  const hint = fuseHint(mainsCurrent);
  return hint !== null && hint <= circuitCurrent ? hint : null;
}
