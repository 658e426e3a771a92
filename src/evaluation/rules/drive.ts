import type { Rule } from "./rule";

export const currentsNotComputed: Rule = {
  code: "currents-not-computed",
  severity: "note",
  sentence:
    "Burst currents and the limits of the switches are not yet computed: {field} of {value} is taken as it is.",
  judge: ({ drive }) => [
    {
      where: "drive.overCurrentLimit",
      quantity: "drive.overCurrentLimit",
      value: drive.overCurrentLimit,
      limit: null,
      remedy: "measure currents on the bench, at low bus voltage first",
    },
  ],
};
