import { fieldAt } from "../../fields/allFields";
import { hasMeaning } from "../../fields/meaning";
import { beyondSpans } from "../solvable";
import type { Rule } from "./rule";

function acceptsZero(path: string): boolean {
  const field = fieldAt(path);
  return field?.kind === "number" && hasMeaning(field.meaning, 0);
}

export const beyondComputedRange: Rule = {
  code: "value-beyond-what-is-solved",
  severity: "error",
  sentence:
    "{field} of {value} is outside the range that can be computed, which {ends} at {limit}; results that depend on it are left out.",
  judge: (design) =>
    beyondSpans(design).map(({ path, value, limit }) => ({
      where: path,
      quantity: path,
      value,
      limit,
      remedy:
        value < limit && acceptsZero(path)
          ? "enter 0 for none, or check the value and its unit"
          : "check the value and its unit",
    })),
};
