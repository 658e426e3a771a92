/** The tuning against something else than the tap, evaluated on demand in a worker of its own. */
import { useEffect, useState } from "react";
import type { Design } from "../design/design";
import type { DriveEvaluation, FieldEvaluation } from "../evaluation/evaluation";
import type { Evaluator } from "./evaluator";
import { pageEvaluator } from "./session";
import { SWEEPS, type SweepName } from "./sweepVariables";

export interface SweepPoint {
  /** SI, of the variable that is swept */
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

let shared: Evaluator | null = null;

/** The worker starts with the first sweep and stays. */
function sweepEvaluator(): Evaluator {
  shared ??= pageEvaluator();
  return shared;
}

let lastRevision = 0;

/** Null where the design at this place has no solution. */
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

/**
 * Evaluates a design at each value of a variable, in order, and tells all points at the end.
 * @returns what ends it; results of requests under way are then dropped
 */
export function evaluateSweep(
  evaluator: Evaluator,
  design: Design,
  name: SweepName,
  tell: (points: readonly SweepPoint[]) => void,
): () => void {
  const sweep = SWEEPS[name];
  const values = sweep.values(design);
  const points: SweepPoint[] = [];
  let index = -1;
  let revision = 0;
  let field: FieldEvaluation | null = null;
  const next = () => {
    index++;
    field = null;
    if (index === values.length) return tell(points);
    revision = ++lastRevision;
    evaluator.request(revision, sweep.change(design, values[index]));
  };
  const endListening = evaluator.listen((reply) => {
    if (reply.revision !== revision) return;
    if (reply.group === "field") {
      field = reply.field;
      return;
    }
    const point = reply.group === "drive" && field ? pointOf(values[index], field, reply.drive) : null;
    if (point) points.push(point);
    next();
  });
  next();
  return endListening;
}

interface Swept {
  name: SweepName;
  points: readonly SweepPoint[];
}

/** Points of a sweep, null before the first; while the design changes the old ones stand. */
export function useTuningSweep(design: Design, name: SweepName): readonly SweepPoint[] | null {
  const [swept, setSwept] = useState<Swept | null>(null);
  const key = JSON.stringify(design);
  useEffect(
    () =>
      evaluateSweep(sweepEvaluator(), JSON.parse(key) as Design, name, (points) =>
        setSwept({ name, points }),
      ),
    [key, name],
  );
  return swept?.name === name ? swept.points : null;
}
