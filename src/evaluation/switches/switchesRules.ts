/** Limits of the switches, their gates' timing and what heats them. */
import { pulseCurrentLimit } from "../../calc/circuit/switchLosses";
import { above } from "../findings/aboveLimit";
import { judgeWhen, type Rule, unlessFound } from "../findings/rule";

export const peakCurrentOverRating: Rule = {
  code: "peak-current-over-rating",
  severity: "error",
  sentence: "{field} of {value} is above the pulse rating of {limit}: the switches will not survive it.",
  judge: above({
    quantity: "drive.switchPeakCurrent",
    limit: ({ drive }) => drive.switch.pulseCurrentRating,
    where: "drive.overCurrentLimit",
    remedy: "lower the limit, bus voltage or on-time, or use more or stronger devices",
  }),
};

export const limitAboveRating: Rule = {
  code: "current-limit-above-rating",
  severity: "error",
  sentence: "{field} of {value} is above the switches' pulse rating of {limit}: it does not protect them.",
  judge: (design) =>
    judgeWhen(design.drive.overCurrentLimit > pulseCurrentLimit(design.drive.switch), () => ({
      where: "drive.overCurrentLimit",
      quantity: "drive.overCurrentLimit",
      value: design.drive.overCurrentLimit,
      limit: pulseCurrentLimit(design.drive.switch),
      remedy: "set it below the rating, or use stronger devices",
    })),
};

export const busOverRating: Rule = {
  code: "bus-over-switch-rating",
  severity: "error",
  sentence: "{field} of {value} is above the switches' voltage rating of {limit}.",
  judge: above({
    quantity: "drive.busVoltage",
    limit: ({ drive }) => drive.switch.voltageRating,
    where: "drive.switch.voltageRating",
    remedy: "use devices with a higher rating, or lower the bus voltage",
  }),
};

/** Share of the rating that leaves room for the leads' overshoot at turn-off; common practice, no source. */
const BUS_SHARE = 0.8;

export const busNearRating: Rule = {
  code: "bus-near-switch-rating",
  severity: "warning",
  sentence:
    "{field} of {value} is above {limit}, 80 % of the switches' rating (common practice): the leads' overshoot at turn-off adds to it.",
  judge: unlessFound(
    busOverRating,
    above({
      quantity: "drive.busVoltage",
      limit: ({ drive }) => BUS_SHARE * drive.switch.voltageRating,
      where: "drive.switch.voltageRating",
      remedy: "use devices with a higher rating, or lower the bus voltage",
    }),
  ),
};

export const junctionOverLimit: Rule = {
  code: "junction-over-limit",
  severity: "error",
  sentence: "{field} reaches {value}, above its limit of {limit}.",
  judge: above({
    quantity: "drive.junctionTemperature",
    limit: ({ drive }) => drive.switch.junctionLimit,
    where: "interrupter.repetitionRate",
    remedy: "lower the repetition rate or the on-time, cool better, or switch off less current",
  }),
};

/** K below the limit; common practice, no source. */
const JUNCTION_RESERVE = 20;

export const junctionNearLimit: Rule = {
  code: "junction-near-limit",
  severity: "warning",
  sentence: "{field} reaches {value}, less than 20 K below its limit; it should not exceed {limit}.",
  judge: unlessFound(
    junctionOverLimit,
    above({
      quantity: "drive.junctionTemperature",
      limit: ({ drive }) => drive.switch.junctionLimit - JUNCTION_RESERVE,
      where: "interrupter.repetitionRate",
      remedy: "lower the repetition rate or the on-time, or cool better",
    }),
  ),
};

/** Share of a cycle by which a pair may turn on late before it is reported; common practice, no source. */
const LATE_SHARE = 0.01;

export const deadTimeLongerThanLead: Rule = {
  code: "dead-time-longer-than-lead",
  severity: "warning",
  sentence:
    "{field} of {value} is longer than the {limit} that the lead time leaves before the current's zero: the next pair turns on late, into the other pair's diodes.",
  judge: ({ drive: { commutation } }, { drive, burst }) => {
    const limit = drive?.longestDeadTime ?? null;
    const frequency = burst?.runningFrequency ?? null;
    if (limit === null || frequency === null || (drive?.turnOffAdvance ?? 0) < 0) return [];
    return judgeWhen(commutation.deadTime > limit + LATE_SHARE / frequency, () => ({
      where: "drive.commutation.deadTime",
      quantity: "drive.commutation.deadTime",
      value: commutation.deadTime,
      limit,
      remedy: "lengthen the lead time, or shorten delay and dead time",
    }));
  },
};

export const turnOffLate: Rule = {
  code: "turn-off-after-zero",
  severity: "warning",
  sentence:
    "At a {field} of {value} the switches turn off after the current's zero, and the next pair turns on hard into conducting diodes; {limit} would bring the turn-off to the zero.",
  judge: ({ drive: { commutation } }, { drive, burst }) => {
    const advance = drive?.turnOffAdvance ?? null;
    const frequency = burst?.runningFrequency ?? null;
    if (advance === null || frequency === null) return [];
    return judgeWhen(advance < -LATE_SHARE / frequency, () => ({
      where: "drive.commutation.leadTime",
      quantity: "drive.commutation.leadTime",
      value: commutation.leadTime,
      limit: drive?.leadAtZero ?? null,
      remedy: "lengthen the lead time, or shorten the delay",
    }));
  },
};

export const deadTimeLongerThanHalfPeriod: Rule = {
  code: "dead-time-covers-half-period",
  severity: "warning",
  sentence:
    "{field} of {value} is at least a half period of the fixed frequency, {limit}: turn-ons are skipped.",
  judge: ({ drive: { commutation } }, { primary }) => {
    const frequency = commutation.frequency ?? primary?.resonance ?? null;
    const limit = frequency && 0.5 / frequency;
    const fixed = commutation.mode === "fixed frequency";
    return judgeWhen(fixed && limit !== null && commutation.deadTime >= limit, () => ({
      where: "drive.commutation.deadTime",
      quantity: "drive.commutation.deadTime",
      value: commutation.deadTime,
      limit,
      remedy: "shorten the dead time",
    }));
  },
};

export const leadTooLong: Rule = {
  code: "lead-longer-than-half-cycle",
  severity: "warning",
  sentence:
    "{field} of {value} is longer than half a cycle, {limit}: the comparator then sees little but the current's slope.",
  judge: ({ drive: { commutation } }, { burst, primary }) => {
    const frequency = burst?.runningFrequency ?? primary?.resonance ?? null;
    const limit = frequency && 0.5 / frequency;
    const applies = commutation.mode === "primary current" && limit !== null && commutation.leadTime > limit;
    return judgeWhen(applies, () => ({
      where: "drive.commutation.leadTime",
      quantity: "drive.commutation.leadTime",
      value: commutation.leadTime,
      limit,
      remedy: "set it close to the delay",
    }));
  },
};
