/** What computes evaluations for the workbench, in a worker or in place. */
import type { Design } from "../design/design";
import type { DriveEvaluation, FieldEvaluation } from "../evaluation/evaluation";

export type EvaluatorReply =
  | { group: "field"; revision: number; field: FieldEvaluation }
  | { group: "drive"; revision: number; drive: DriveEvaluation }
  | { group: "failure"; revision: number; sentence: string };

export interface Evaluator {
  /** Asks for the evaluation of a design; a newer request replaces one that has not begun. */
  request(revision: number, design: Design): void;
  /** Receives the replies of all requests; returns what ends the listening. */
  listen(listener: (reply: EvaluatorReply) => void): () => void;
  /** Ends it for good. */
  close(): void;
}
