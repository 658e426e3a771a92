/** Limits of mains circuit, reservoir and interrupter. */
import { above } from "../findings/aboveLimit";
import { judgeWhen, type Rule, unlessFound } from "../findings/rule";

export const supplyOverloaded: Rule = {
  code: "supply-does-not-carry-load",
  severity: "error",
  sentence:
    "{field} of {value} pulls the bus below half of its no-load voltage: the supply cannot carry this load.",
  judge: (_, { drive }) =>
    judgeWhen(drive?.carriesLoad === false, () => ({
      where: "interrupter.repetitionRate",
      quantity: "drive.averagePower",
      value: drive?.averagePower ?? null,
      limit: null,
      remedy: "lower the repetition rate or the on-time, or use a stronger supply",
    })),
};

export const mainsOverloaded: Rule = {
  code: "mains-circuit-overloaded",
  severity: "error",
  sentence: "{field} of {value} is above the circuit's {limit}: its breaker trips.",
  judge: above({
    quantity: "drive.mainsCurrent",
    limit: ({ drive }) => drive.supply.circuitCurrent,
    where: "interrupter.repetitionRate",
    remedy: "lower the repetition rate or the on-time, or have a licensed person install a stronger circuit",
  }),
};

/** Share of a circuit's rating for continuous load; common practice, no source. */
const LASTING_SHARE = 0.8;

export const mainsNearRating: Rule = {
  code: "mains-circuit-near-rating",
  severity: "warning",
  sentence: "{field} of {value} is above {limit}, what the circuit can carry continuously (common practice).",
  judge: unlessFound(
    mainsOverloaded,
    above({
      quantity: "drive.mainsCurrent",
      limit: ({ drive }) => LASTING_SHARE * drive.supply.circuitCurrent,
      where: "interrupter.repetitionRate",
      remedy: "lower the repetition rate or the on-time, or add a choke before the rectifier",
    }),
  ),
};

/** s. Source: iec60204, 6.2.4. */
const DISCHARGE_WITHIN = 5;

export const dischargeSlow: Rule = {
  code: "reservoir-discharges-slowly",
  severity: "note",
  sentence:
    "{field} takes {value}, longer than {limit} (IEC 60204-1): the bus stays deadly after switching off.",
  judge: above({
    quantity: "drive.dischargeTime",
    limit: () => DISCHARGE_WITHIN,
    where: "drive.supply.dischargeResistance",
    remedy: "put up a warning with that time, wait, and measure before touching; or fit a switched discharge",
  }),
};

export const burstsOverlap: Rule = {
  code: "bursts-closer-than-gap",
  severity: "error",
  sentence:
    "{field} of {value} leaves less than the shortest gap between bursts: the maximum at this on-time is {limit}.",
  judge: ({ interrupter: { onTime, repetitionRate, shortestGap } }) => {
    const most = 1 / (onTime + shortestGap);
    return judgeWhen(repetitionRate > most, () => ({
      where: "interrupter.repetitionRate",
      quantity: "interrupter.repetitionRate",
      value: repetitionRate,
      limit: most,
      remedy: "lower the repetition rate, or shorten on-time or gap",
    }));
  },
};

export const onTimeOverLongest: Rule = {
  code: "on-time-over-longest",
  severity: "warning",
  sentence: "{field} of {value} is above the interrupter's longest on-time of {limit}.",
  judge: ({ interrupter }) =>
    judgeWhen(interrupter.onTime > interrupter.longestOnTime, () => ({
      where: "interrupter.onTime",
      quantity: "interrupter.onTime",
      value: interrupter.onTime,
      limit: interrupter.longestOnTime,
      remedy: "shorten the on-time",
    })),
};

export const dutyOverLimit: Rule = {
  code: "duty-over-limit",
  severity: "warning",
  sentence: "{field} of {value} is above the interrupter's limit of {limit}.",
  judge: above({
    quantity: "drive.duty",
    limit: ({ interrupter }) => interrupter.dutyLimit,
    where: "interrupter.repetitionRate",
    remedy: "lower the repetition rate or the on-time",
  }),
};
