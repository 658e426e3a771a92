/** The current transformers ahead of the over-current comparator. */
import { above } from "../findings/aboveLimit";
import { judgeWhen, type Rule } from "../findings/rule";

export const coreSaturates: Rule = {
  code: "current-transformer-saturates",
  severity: "error",
  sentence:
    "{field} reaches {value}, above the core's saturation at {limit}: the comparator sees less current than flows.",
  judge: above({
    quantity: "drive.coreFluxDensity",
    limit: ({ drive }) => drive.currentTransformer.saturationFluxDensity,
    where: "drive.currentTransformer.burden",
    remedy: "lower the burden, wind more turns or use a larger core",
  }),
};

/** Relative: a resistor's tolerance and one turn. */
const AGREEMENT = 0.05;

export const comparatorDisagrees: Rule = {
  code: "comparator-level-differs",
  severity: "warning",
  sentence:
    "{field} of {value} does not match the {limit} that the current transformers give at the over-current limit.",
  judge: ({ drive: { currentTransformer } }, { drive }) => {
    const { comparatorVoltage } = currentTransformer;
    const wanted = drive?.limitVoltageAtComparator ?? null;
    if (comparatorVoltage === null || wanted === null) return [];
    return judgeWhen(Math.abs(comparatorVoltage / wanted - 1) > AGREEMENT, () => ({
      where: "drive.currentTransformer.comparatorVoltage",
      quantity: "drive.currentTransformer.comparatorVoltage",
      value: comparatorVoltage,
      limit: wanted,
      remedy: "set the level to that value, or change burden or turns",
    }));
  },
};
