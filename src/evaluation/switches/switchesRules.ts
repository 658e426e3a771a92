/** Limits of the switches, their gates' timing and what heats them. */
import { pulseCurrentLimit } from "../../calc/circuit/switchLosses";
import { above } from "../findings/aboveLimit";
import { judgeWhen, type Rule, unlessSaid } from "../findings/rule";

export const peakCurrentOverRating: Rule = {
  code: "peak-current-over-rating",
  severity: "error",
  sentence: "{field} of {value} is above the pulse rating of {limit}: the switches do not survive it.",
  judge: above({
    quantity: "drive.switchPeakCurrent",
    limit: ({ drive }) => drive.switch.pulseCurrentRating,
    where: "drive.overCurrentLimit",
    remedy: "lower limit, bus or on-time, or take more or stronger devices",
  }),
};

export const limitAboveRating: Rule = {
  code: "current-limit-above-rating",
  severity: "error",
  sentence: "{field} of {value} stands above the switches' pulse rating of {limit}: it protects nothing.",
  judge: (design) =>
    judgeWhen(design.drive.overCurrentLimit > pulseCurrentLimit(design.drive.switch), () => ({
      where: "drive.overCurrentLimit",
      quantity: "drive.overCurrentLimit",
      value: design.drive.overCurrentLimit,
      limit: pulseCurrentLimit(design.drive.switch),
      remedy: "set it below the rating, or take stronger devices",
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
    remedy: "take devices of a higher rating or a lower bus",
  }),
};

/** Part of the rating that leaves room for what the leads add at turn-off; common practice, no source. */
const BUS_SHARE = 0.8;

export const busNearRating: Rule = {
  code: "bus-near-switch-rating",
  severity: "warning",
  sentence:
    "{field} of {value} is above {limit}, eight tenths of the switches' rating: the leads' overshoot at turn-off comes on top (common practice).",
  judge: unlessSaid(
    busOverRating,
    above({
      quantity: "drive.busVoltage",
      limit: ({ drive }) => BUS_SHARE * drive.switch.voltageRating,
      where: "drive.switch.voltageRating",
      remedy: "take devices of a higher rating, or keep the bus lower",
    }),
  ),
};

export const junctionOverLimit: Rule = {
  code: "junction-over-limit",
  severity: "error",
  sentence: "{field} comes to {value}, above its limit of {limit}.",
  judge: above({
    quantity: "drive.junctionTemperature",
    limit: ({ drive }) => drive.switch.junctionLimit,
    where: "interrupter.repetitionRate",
    remedy: "play slower or shorter, cool better, or switch off less current",
  }),
};

/** K below the limit; common practice, no source. */
const JUNCTION_RESERVE = 20;

export const junctionNearLimit: Rule = {
  code: "junction-near-limit",
  severity: "warning",
  sentence: "{field} comes to {value}, less than 20 K below its limit: {limit} is as far as it should go.",
  judge: unlessSaid(
    junctionOverLimit,
    above({
      quantity: "drive.junctionTemperature",
      limit: ({ drive }) => drive.switch.junctionLimit - JUNCTION_RESERVE,
      where: "interrupter.repetitionRate",
      remedy: "play slower or shorter, or cool better",
    }),
  ),
};

/** Part of a cycle by which a pair may come on late before it is worth a word; common practice, no source. */
const LATE_SHARE = 0.01;

export const deadTimeLongerThanLead: Rule = {
  code: "dead-time-longer-than-lead",
  severity: "warning",
  sentence:
    "{field} of {value} is longer than the {limit} that the lead leaves before the current's zero: the next pair comes on late, into the diodes of the other.",
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
    "{field} of {value} covers whole half periods of the fixed frequency, {limit} each: pairs are skipped.",
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
      remedy: "bring it near the delay",
    }));
  },
};
