/** Evaluations of the open design with each of several top loads, in the background. */
import { useEffect, useState } from "react";
import type { Design } from "../../design/design";
import type { LineUpCandidate } from "../../design/show";
import type { DriveEvaluation, FieldEvaluation } from "../../evaluation/evaluation";
import type { Batch } from "./batch";
import type { EvaluationRequest } from "./evaluationJob";
import { evaluationPool, ofSession } from "./evaluationPool";
import { type Round, useRound } from "./useRound";

/** By the candidate's id; null if the evaluation failed. */
export type CandidateEvaluations = Readonly<Record<string, FieldEvaluation | null>>;

/** Evaluates candidates and reports each result as it arrives. */
export function evaluateCandidates(
  batch: Batch<EvaluationRequest, DriveEvaluation, FieldEvaluation>,
  design: Design,
  candidates: readonly Pick<LineUpCandidate, "id" | "topLoad">[],
  tell: (id: string, field: FieldEvaluation | null) => void,
): void {
  batch.run(
    candidates.map(({ topLoad }) => ({ design: { ...design, topLoad } })),
    {
      partial: (index, field) => tell(candidates[index].id, field),
      result: () => undefined,
      failure: (index) => tell(candidates[index].id, null),
    },
  );
}

/** ms without a change before it begins, so that editing has the processors to itself */
const PAUSE = 60;

export const lineUpBatch = evaluationPool.batch(ofSession("the comparison of top loads"));

export interface Comparison extends Round {
  /** the old ones stay until the new ones arrive */
  evaluations: CandidateEvaluations;
}

/** The candidates' field evaluations. */
export function useCandidateEvaluations(design: Design, candidates: readonly LineUpCandidate[]): Comparison {
  const [evaluations, setEvaluations] = useState<CandidateEvaluations>({});
  const key = JSON.stringify([
    { ...design, topLoad: null },
    candidates.map(({ id, topLoad }) => ({ id, topLoad })),
  ]);
  const round = useRound(key, lineUpBatch.cancel);
  const count = round.round;
  useEffect(() => {
    const [asked, list] = JSON.parse(key) as [Design, Pick<LineUpCandidate, "id" | "topLoad">[]];
    const start = () =>
      evaluateCandidates(lineUpBatch, asked, list, (id, field) =>
        setEvaluations((before) => ({ ...before, [id]: field })),
      );
    const timer = setTimeout(start, count > 0 ? 0 : PAUSE);
    return () => {
      clearTimeout(timer);
      lineUpBatch.cancel();
    };
  }, [key, count]);
  return { ...round, evaluations };
}
