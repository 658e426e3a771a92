/** Evaluations of the open design with each of several top loads, one after the other in a worker of their own. */
import { useEffect, useState } from "react";
import type { Design } from "../design/design";
import type { LineUpCandidate } from "../design/show";
import type { FieldEvaluation } from "../evaluation/evaluation";
import type { Evaluator } from "./evaluator";
import { pageEvaluator } from "./session";

export type CandidateEvaluations = Readonly<Record<string, FieldEvaluation>>;

let shared: Evaluator | null = null;

/** The worker starts with the first line-up and stays. */
function candidateEvaluator(): Evaluator {
  shared ??= pageEvaluator();
  return shared;
}

let lastRevision = 0;

/**
 * Evaluates candidates in order and tells each result.
 * @returns what ends it; results of requests under way are then dropped
 */
export function evaluateCandidates(
  evaluator: Evaluator,
  design: Design,
  candidates: readonly Pick<LineUpCandidate, "id" | "topLoad">[],
  tell: (id: string, field: FieldEvaluation) => void,
): () => void {
  let index = -1;
  let revision = 0;
  const next = () => {
    index++;
    if (index === candidates.length) return;
    revision = ++lastRevision;
    evaluator.request(revision, { ...design, topLoad: candidates[index].topLoad });
  };
  const endListening = evaluator.listen((reply) => {
    if (reply.revision !== revision) return;
    if (reply.group === "field") tell(candidates[index].id, reply.field);
    else next();
  });
  next();
  return endListening;
}

/** Field evaluations by the candidate's id; the old ones stand until the new ones are there. */
export function useCandidateEvaluations(
  design: Design,
  candidates: readonly LineUpCandidate[],
): CandidateEvaluations {
  const [evaluations, setEvaluations] = useState<CandidateEvaluations>({});
  const key = JSON.stringify([
    { ...design, topLoad: null },
    candidates.map(({ id, topLoad }) => ({ id, topLoad })),
  ]);
  useEffect(() => {
    const [asked, list] = JSON.parse(key) as [Design, Pick<LineUpCandidate, "id" | "topLoad">[]];
    return evaluateCandidates(candidateEvaluator(), asked, list, (id, field) =>
      setEvaluations((before) => ({ ...before, [id]: field })),
    );
  }, [key]);
  return evaluations;
}
