/** Limits on the burst itself. */
import { longestOnTime } from "../../calc/burst/stepper";
import { coupledNetwork } from "../../calc/circuit/coupledNetwork";
import { pulseCurrentLimit } from "../../calc/circuit/switchLosses";
import { above } from "../findings/aboveLimit";
import { judgeWhen, type Rule } from "../findings/rule";
import { areSolvable, BURST } from "../solvable";
import type { SolvedCoil } from "../solvedCoil";

/** s, longest on-time that can be simulated; null if a circuit has no solution. */
function longestSimulatedOnTime({ secondary, primary, coupling }: SolvedCoil): number | null {
  if (!primary || !secondary || !coupling) return null;
  const most = longestOnTime(coupledNetwork(primary, secondary, coupling.mutuals, null));
  return most > 0 ? most : null;
}

export const burstNotSolved: Rule = {
  code: "burst-not-solved",
  severity: "error",
  sentence:
    "With the {field} at {value}, no burst can be computed: the couplings are impossible, the tank has no resonance, its ringing does not decay, or the bridge's commutation does not settle.",
  judge: (design, { primary: solved, secondary, coupling, burst }, coil) => {
    const { primary, interrupter } = design;
    const circuits = solved !== null && secondary !== null && coupling !== null;
    const explained =
      !areSolvable(design, BURST) ||
      interrupter.onTime > (longestSimulatedOnTime(coil) ?? Number.POSITIVE_INFINITY);
    return judgeWhen(circuits && burst === null && !explained, () => ({
      where: "primary.innerRadius",
      quantity: "primary.innerRadius",
      value: primary.innerRadius,
      limit: null,
      remedy: "bring geometry and bank back into their usual ranges",
    }));
  },
};

export const burstTooLong: Rule = {
  code: "on-time-beyond-what-is-followed",
  severity: "error",
  sentence:
    "{field} of {value} covers more cycles than can be simulated; the longest for this coil is {limit}.",
  judge: (design, { burst }, coil) => {
    const { onTime } = design.interrupter;
    const most = longestSimulatedOnTime(coil);
    return judgeWhen(burst === null && most !== null && onTime > most, () => ({
      where: "interrupter.onTime",
      quantity: "interrupter.onTime",
      value: onTime,
      limit: most,
      remedy: "shorten the on-time",
    }));
  },
};

export const limitTrips: Rule = {
  code: "current-limit-reached",
  severity: "note",
  sentence: "The over-current limit acts {value} into a burst, before the on-time of {limit} ends.",
  judge: ({ interrupter }, { burst }) =>
    judgeWhen(burst !== null && burst.limitTrips !== null, () => ({
      where: "interrupter.onTime",
      quantity: "burst.limitTrips",
      value: burst?.limitTrips ?? null,
      limit: interrupter.onTime,
      remedy: "shorten the on-time to stay below the limit, or lower the bus voltage",
    })),
};

/** Ratio to the limit; a smaller overshoot is due to the switches' delay alone. */
const OVERSHOOT = 1.1;
/** Ratio to the pulse rating; below it the overshoot does no harm; common practice, no source. */
const NEAR_RATING = 0.8;

export const currentDrivenPastLimit: Rule = {
  code: "current-driven-past-limit",
  severity: "warning",
  sentence:
    "{field} of {value} is more than 10 % above the over-current limit of {limit}: the energy in the tank keeps driving the current after the switches have turned off.",
  judge: ({ drive: { overCurrentLimit, switch: device } }, { burst }) => {
    const peak = burst?.peakPrimaryCurrent ?? 0;
    const near = peak > NEAR_RATING * pulseCurrentLimit(device);
    return judgeWhen(near && peak > OVERSHOOT * overCurrentLimit, () => ({
      where: "drive.overCurrentLimit",
      quantity: "burst.peakPrimaryCurrent",
      value: peak,
      limit: overCurrentLimit,
      remedy: "set the limit lower, so that the peak stays within the switches' rating",
    }));
  },
};

export const onTimePastBeatMinimum: Rule = {
  code: "on-time-past-beat-minimum",
  severity: "note",
  sentence:
    "The primary current's first beat minimum, {value} into the burst, lies within the on-time of {limit}: after it, energy flows back from the secondary.",
  judge: ({ interrupter }, { burst }) => {
    const time = burst?.firstBeatMinimum ?? null;
    // a limit that ends half cycles shapes the envelope from where it first acts
    const natural = time !== null && time < (burst?.limitTrips ?? Number.POSITIVE_INFINITY);
    return judgeWhen(natural && interrupter.onTime > time, () => ({
      where: "interrupter.onTime",
      quantity: "burst.firstBeatMinimum",
      value: time,
      limit: interrupter.onTime,
      remedy: "compare the energy into the spark with a shorter on-time or another tap",
    }));
  },
};

/** V/m along the winding in air; common practice, no source. */
const GRADIENT_LIMIT = 1e6;

export const gradientHigh: Rule = {
  code: "gradient-along-winding-high",
  severity: "warning",
  sentence: "{field} of {value} is above {limit}, where a winding flashes over (common practice).",
  judge: above({
    quantity: "burst.windingGradient",
    limit: () => GRADIENT_LIMIT,
    where: "secondary.windingLength",
    remedy: "use a longer winding, a lower bus voltage or a shorter on-time",
  }),
};

/** V/m, mean over a gap of some centimetres between rounded conductors; common practice, no source. */
const GAP_LIMIT = 5e5;

export const flashoverToSecondary: Rule = {
  code: "flashover-primary-to-secondary",
  severity: "warning",
  sentence: "{field} of {value} is above {limit}, where the air between them flashes over (common practice).",
  judge: above({
    quantity: "burst.gapField",
    limit: () => GAP_LIMIT,
    where: "primary.innerRadius",
    remedy: "widen the primary, raise the secondary or insulate between them",
  }),
};

/** Share of the bus voltage. */
const MOST_SAG = 0.15;

export const reservoirSags: Rule = {
  code: "reservoir-sag-large",
  severity: "warning",
  sentence:
    "{field} of {value} is more than {limit}, 15 % of the bus voltage: the burst weakens towards its end.",
  judge: above({
    quantity: "burst.reservoirSag",
    limit: (_, { drive }) => drive && MOST_SAG * drive.busVoltage,
    where: "drive.reservoirCapacitance",
    remedy: "use a larger reservoir or a shorter on-time",
  }),
};
