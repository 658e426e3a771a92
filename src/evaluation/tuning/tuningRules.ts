import { judgeWhen, type Rule } from "../findings/rule";

export const noSuggestedTap: Rule = {
  code: "aim-out-of-reach",
  severity: "warning",
  sentence:
    "No tap on this primary reaches the target frequency of {limit}; with all turns it resonates at {value}.",
  judge: ({ tuningAim }, { tuning }) =>
    judgeWhen(tuning !== null && tuning.suggestedTap === null && tuningAim.kind !== "most energy", () => ({
      where: "primary.turns",
      quantity: "tuning.curve.0.primaryResonance",
      value: tuning?.curve.at(-1)?.primaryResonance ?? null,
      limit: tuning?.targetResonance ?? null,
      remedy: "change the bank, the turns or the top load until the two curves cross",
    })),
};

export const nothingForMostEnergy: Rule = {
  code: "no-energy-to-aim-at",
  severity: "error",
  sentence:
    "The tuning aim is most energy into the spark, but with the {field} at {value} the spark gets none: no tap can be suggested.",
  judge: ({ tuningAim, spark, interrupter }) => {
    if (tuningAim.kind !== "most energy") return [];
    const missing = [
      { path: "spark.length", value: spark.length },
      { path: "interrupter.onTime", value: interrupter.onTime },
    ].filter(({ value }) => value === 0);
    return missing.map(({ path, value }) => ({
      where: path,
      quantity: path,
      value,
      limit: null,
      remedy: "set it above zero, or choose another tuning aim",
    }));
  },
};

export const notTuned: Rule = {
  code: "primary-not-tuned",
  severity: "note",
  sentence: "{field} at {value} is not the suggested {limit}.",
  judge: ({ primary }, { tuning }) =>
    judgeWhen(
      tuning !== null && tuning.suggestedTap !== null && !tuning.tuned && primary.tap <= primary.turns,
      () => ({
        where: "primary.tap",
        quantity: "primary.tap",
        value: primary.tap,
        limit: tuning?.suggestedTap ?? null,
        remedy: "move the tap, or use the suggested one",
      }),
    ),
};

/** Relative deviation from which it is reported. */
const REPORTED_DEVIATION = 0.03;

export const measuredResonanceDiffers: Rule = {
  code: "measured-resonance-differs",
  severity: "note",
  sentence:
    "The measured resonance of {value} differs by more than 3 % from the computed {limit}; the suggested tap follows the measured one.",
  judge: ({ secondary }, evaluation) => {
    const computed = evaluation.secondary?.resonance;
    const measured = secondary.measuredResonance;
    if (computed === undefined || measured === null) return [];
    return judgeWhen(Math.abs(measured / computed - 1) > REPORTED_DEVIATION, () => ({
      where: "secondary.measuredResonance",
      quantity: "secondary.resonance",
      value: measured,
      limit: computed,
      remedy: "check turns, winding length and objects near the coil during the measurement",
    }));
  },
};

/** Common practice, no source: above it sparks tend to race up the winding. */
const RACING_COUPLING = 0.2;

export const couplingHigh: Rule = {
  code: "coupling-high",
  severity: "warning",
  sentence:
    "{field} of {value} is above {limit}, where sparks tend to race along the winding (common practice).",
  judge: (_, { coupling }) =>
    judgeWhen(coupling !== null && coupling.circuit > RACING_COUPLING, () => ({
      where: "secondary.baseHeight",
      quantity: "coupling.circuit",
      value: coupling?.circuit ?? null,
      limit: RACING_COUPLING,
      remedy: "raise the secondary or widen the primary",
    })),
};
