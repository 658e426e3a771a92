import { fieldAt } from "../../fields/allFields";
import { hasMeaning } from "../../fields/meaning";
import { beyondSpans } from "../solvable";
import type { Rule } from "./rule";

function mayBeNothing(path: string): boolean {
  const field = fieldAt(path);
  return field?.kind === "number" && hasMeaning(field.meaning, 0);
}

export const beyondWhatIsSolved: Rule = {
  code: "value-beyond-what-is-solved",
  severity: "error",
  sentence:
    "{field} of {value} is beyond what can be computed, which {ends} at {limit}; what depends on it is left out.",
  judge: (design) =>
    beyondSpans(design).map(({ path, value, limit }) => ({
      where: path,
      quantity: path,
      value,
      limit,
      remedy:
        value < limit && mayBeNothing(path)
          ? "enter 0 for none, or check the figure and its unit"
          : "check the figure and its unit",
    })),
};
