import type { Source } from "../../evaluation/register/source";

/** One model: what is solved and how, in addition to the register entries of its results. */
export interface Model {
  title: string;
  words: string;
  equations: readonly string[];
  /** meanings of the symbols that the description does not give */
  symbols?: string;
  source: readonly Source[];
  /** ids of its results in the register */
  results: readonly string[];
}

/** A chapter of the theory page. */
export interface TheorySection {
  id: string;
  title: string;
  models: readonly Model[];
  /** the groups of the reference table that check it */
  checkedBy: readonly string[];
}
