/** The tuning against variables other than the tap, evaluated on request in the background. */
import { useEffect, useState } from "react";
import type { Design } from "../../design/design";
import type { DriveEvaluation, FieldEvaluation } from "../../evaluation/evaluation";
import type { Batch } from "./batch";
import type { EvaluationRequest } from "./evaluationJob";
import { evaluationPool, ofSession } from "./evaluationPool";
import { SWEEPS, type SweepName } from "./sweepVariables";
import { type Round, useRound } from "./useRound";

export interface SweepPoint {
  /** SI, value of the swept variable */
  x: number;
  primaryResonance: number;
  resonance: number;
  loadedResonance: number;
  lowerPole: number;
  upperPole: number;
  loadedLowerPole: number;
  loadedUpperPole: number;
  coupling: number;
}

/** Null if the design has no solution at this value. */
function pointOf(x: number, field: FieldEvaluation, { response }: DriveEvaluation): SweepPoint | null {
  const { primary, secondary, coupling } = field;
  if (!primary || !secondary || !coupling || !response) return null;
  const { lowerPole, upperPole, loadedLowerPole, loadedUpperPole } = response;
  const { resonance, loadedResonance } = secondary;
  return {
    x,
    primaryResonance: primary.resonance,
    resonance,
    loadedResonance,
    lowerPole,
    upperPole,
    loadedLowerPole,
    loadedUpperPole,
    coupling: coupling.circuit,
  };
}

export interface Sweep {
  points: readonly SweepPoint[];
  /** values that could not be evaluated */
  failed: number;
}

type Evaluations = Batch<EvaluationRequest, DriveEvaluation, FieldEvaluation>;

/** Evaluates a design at each value of a variable and reports all points, in order, at the end. */
export function evaluateSweep(
  batch: Evaluations,
  design: Design,
  name: SweepName,
  tell: (sweep: Sweep) => void,
): void {
  const sweep = SWEEPS[name];
  const values = sweep.values(design);
  const fields = new Map<number, FieldEvaluation>();
  const points = new Map<number, SweepPoint | null>();
  let failed = 0;
  batch.run(
    values.map((value) => ({ design: sweep.change(design, value) })),
    {
      partial: (index, field) => fields.set(index, field),
      result(index, drive) {
        const field = fields.get(index);
        points.set(index, field ? pointOf(values[index], field, drive) : null);
      },
      failure() {
        failed++;
      },
      done: () => tell({ points: values.flatMap((_, index) => points.get(index) ?? []), failed }),
    },
  );
}

export const tuningBatch = evaluationPool.batch(ofSession("the tuning sweep"));

/** ms without a change before a sweep begins, so that editing has the processors to itself */
const PAUSE = 150;

interface Swept extends Sweep {
  name: SweepName;
}

export interface FollowedSweep extends Round {
  /** null before the first; the old one stays while the design changes and a new one is computed */
  sweep: Sweep | null;
}

/** The sweep of a design over a variable. */
export function useTuningSweep(design: Design, name: SweepName): FollowedSweep {
  const [swept, setSwept] = useState<Swept | null>(null);
  const key = JSON.stringify([design, name]);
  const round = useRound(key, tuningBatch.cancel);
  const count = round.round;
  useEffect(() => {
    const [asked, variable] = JSON.parse(key) as [Design, SweepName];
    const start = () =>
      evaluateSweep(tuningBatch, asked, variable, (sweep) => setSwept({ name: variable, ...sweep }));
    const timer = setTimeout(start, count > 0 ? 0 : PAUSE);
    return () => {
      clearTimeout(timer);
      tuningBatch.cancel();
    };
  }, [key, count]);
  return { ...round, sweep: swept?.name === name ? swept : null };
}
