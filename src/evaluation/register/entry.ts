import type { Dimension } from "../../units/dimension";
import type { Source } from "./source";

/** The documentation of one result: its name, model, sources, validity and accuracy. */
export interface ResultEntry {
  /** dotted path in the evaluation; `*` stands for an index */
  id: string;
  label: string;
  symbol: string;
  dimension: Dimension;
  /** the model in words, one or two sentences */
  words: string;
  /** the model in symbols */
  formula: string;
  /** paths of fields and ids of results that go in directly */
  inputs: readonly string[];
  source: readonly Source[];
  validity: string;
  accuracy: string;
}
