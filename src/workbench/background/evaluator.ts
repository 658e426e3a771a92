/** What computes evaluations for the workbench. */
import type { Design } from "../../design/design";
import type { DriveEvaluation, FieldEvaluation } from "../../evaluation/evaluation";
import type { Trouble } from "./trouble";

export type EvaluatorReply =
  | { group: "field"; revision: number; field: FieldEvaluation }
  | { group: "drive"; revision: number; drive: DriveEvaluation }
  | { group: "failure"; revision: number; trouble: Trouble };

export interface Evaluator {
  /**
   * Asks for the evaluation of a design; a newer request replaces one that has not begun.
   * @param mostEnergyTap turns, where bursts give the spark most energy; left out while they are not swept
   */
  request(revision: number, design: Design, mostEnergyTap?: number | null): void;
  /** Receives the replies of all requests; returns what ends the listening. */
  listen(listener: (reply: EvaluatorReply) => void): () => void;
  /** Ends it for good. */
  close(): void;
}
