/** Limits of one unit of the bank. */
import { bankPeakCurrentRating } from "../../calc/circuit/bank";
import { above } from "../findings/aboveLimit";
import { judgeWhen, type Rule } from "../findings/rule";

export const bankVoltageOverRating: Rule = {
  code: "bank-voltage-over-rating",
  severity: "error",
  sentence: "{field} of {value} is above the rated {limit}.",
  judge: above({
    quantity: "tank.unitPeakVoltage",
    limit: ({ tank }) => tank.unit.dcVoltage,
    where: "tank.unitsInSeries",
    remedy: "connect more units in series, or lower the current",
  }),
};

export const bankPeakCurrentOverRating: Rule = {
  code: "bank-peak-current-over-rating",
  severity: "error",
  sentence: "{field} of {value} is above the rated {limit}.",
  judge: above({
    quantity: "tank.unitPeakCurrent",
    limit: ({ tank }) => tank.unit.peakCurrent,
    where: "tank.strings",
    remedy: "connect more strings in parallel, or lower the current",
  }),
};

export const bankRmsCurrentOverRating: Rule = {
  code: "bank-rms-current-over-rating",
  severity: "error",
  sentence: "{field} of {value} is above the rated {limit}: the unit overheats.",
  judge: above({
    quantity: "tank.unitRmsCurrent",
    limit: ({ tank }) => tank.unit.rmsCurrent,
    where: "tank.strings",
    remedy: "connect more strings in parallel, or lower the repetition rate or the on-time",
  }),
};

export const limitAboveBankRating: Rule = {
  code: "current-limit-above-bank-rating",
  severity: "warning",
  sentence: "{field} of {value} is above the bank's peak current rating of {limit}.",
  judge: (design) =>
    judgeWhen(design.drive.overCurrentLimit > bankPeakCurrentRating(design.tank), () => ({
      where: "drive.overCurrentLimit",
      quantity: "drive.overCurrentLimit",
      value: design.drive.overCurrentLimit,
      limit: bankPeakCurrentRating(design.tank),
      remedy: "set it below the rating, or connect more strings in parallel",
    })),
};
