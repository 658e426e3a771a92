/** The chain of current transformers before the over-current comparator. */
import { above } from "../findings/aboveLimit";
import { judgeWhen, type Rule } from "../findings/rule";

export const coreSaturates: Rule = {
  code: "current-transformer-saturates",
  severity: "error",
  sentence: "{field} comes to {value}, above the core's {limit}: the comparator sees less than flows.",
  judge: above({
    quantity: "drive.coreFluxDensity",
    limit: ({ drive }) => drive.currentTransformer.saturationFluxDensity,
    where: "drive.currentTransformer.burden",
    remedy: "lower the burden, wind more turns or take a larger core",
  }),
};

/** Relative: a resistor's tolerance and a turn's worth. */
const AGREEMENT = 0.05;

export const comparatorDisagrees: Rule = {
  code: "comparator-level-differs",
  severity: "warning",
  sentence: "{field} of {value} is not the {limit} that the chain gives at the over-current limit.",
  judge: ({ drive: { currentTransformer } }, { drive }) => {
    const { comparatorVoltage } = currentTransformer;
    const wanted = drive?.limitVoltageAtComparator ?? null;
    if (comparatorVoltage === null || wanted === null) return [];
    return judgeWhen(Math.abs(comparatorVoltage / wanted - 1) > AGREEMENT, () => ({
      where: "drive.currentTransformer.comparatorVoltage",
      quantity: "drive.currentTransformer.comparatorVoltage",
      value: comparatorVoltage,
      limit: wanted,
      remedy: "set the level to that, or change burden or turns",
    }));
  },
};
