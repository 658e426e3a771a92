import { fieldValues } from "../../design/changeAt";
import { allFields } from "../../fields/allFields";
import { beyondSpans } from "../solvable";
import type { Judgement, Rule } from "./rule";

type Side = "minimum" | "maximum";

function outside(side: Side): Rule["judge"] {
  return (design) => {
    const beyond = new Set(beyondSpans(design).map(({ path }) => path));
    return allFields.flatMap((field): Judgement[] => {
      if (field.kind !== "number") return [];
      const limit = field.range[side];
      const isPast = (value: number) => (side === "minimum" ? value < limit : value > limit);
      return fieldValues(design, field.path).flatMap(({ path, value }) =>
        typeof value === "number" && isPast(value) && !beyond.has(path)
          ? [{ where: path, quantity: path, value, limit, remedy: "check the value and its unit" }]
          : [],
      );
    });
  };
}

const SENTENCE = "{field} of {value} is outside the range this model is meant for, which";

export const belowRange: Rule = {
  code: "below-usual-range",
  severity: "warning",
  sentence: `${SENTENCE} begins at {limit}.`,
  judge: outside("minimum"),
};

export const aboveRange: Rule = {
  code: "above-usual-range",
  severity: "warning",
  sentence: `${SENTENCE} ends at {limit}.`,
  judge: outside("maximum"),
};
