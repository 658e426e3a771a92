/** The interface to the computation of evaluations. */
import type { Design } from "../../design/design";
import type { DriveEvaluation, FieldEvaluation } from "../../evaluation/evaluation";
import type { Trouble } from "./trouble";

export type EvaluatorReply =
  | { group: "field"; revision: number; field: FieldEvaluation }
  | { group: "drive"; revision: number; drive: DriveEvaluation }
  | { group: "failure"; revision: number; trouble: Trouble };

export interface Evaluator {
  /**
   * Requests the evaluation of a design; a newer request replaces one that has not begun.
   * @param mostEnergyTap turns, the tap with most energy into the spark; omitted if bursts have not been swept
   */
  request(revision: number, design: Design, mostEnergyTap?: number | null): void;
  /** Receives the replies to all requests; returns a function that stops listening. */
  listen(listener: (reply: EvaluatorReply) => void): () => void;
  /** Stops the evaluator permanently. */
  close(): void;
}
