import type { Source } from "../../evaluation/register/source";

/** One model: what is solved and how, beyond what the register says of each result. */
export interface Model {
  title: string;
  words: string;
  equations: readonly string[];
  /** what the symbols stand for that the words leave open */
  symbols?: string;
  source: readonly Source[];
  /** ids of the register's results that come of it */
  results: readonly string[];
}

/** A chapter of the theory page. */
export interface TheorySection {
  id: string;
  title: string;
  models: readonly Model[];
  /** groups of the reference table that check it */
  checkedBy: readonly string[];
}
