import type { Coil } from "../calc/music/lane";
import type { Design } from "../design/design";
import { evaluate } from "../evaluation/evaluate";
import { findingMessage } from "../evaluation/findings/findingMessage";
import type { Outcome, PrintedEvaluation } from "./outcome";
import { coilsOf, readDocument } from "./readDocument";

function printed(design: Design): PrintedEvaluation {
  const evaluation = evaluate(design);
  const findings = evaluation.findings.map(({ sentence, ...finding }) => ({
    ...finding,
    message: findingMessage({ ...finding, sentence }, "metric"),
  }));
  return { ...evaluation, findings };
}

function outcomesOf(file: string): Outcome[] {
  const read = readDocument(file);
  if (read.kind === "refused") return [{ file, faults: read.faults }];
  if (read.kind === "design") return [{ file, evaluation: printed(read.design) }];
  const coils = Object.entries(coilsOf(read.show)) as [Coil, Design][];
  return coils.map(([coil, design]) => ({ file, coil, evaluation: printed(design) }));
}

/** Reads and evaluates one file; of a show, the left coil before the right. Never throws. */
export function evaluateFile(file: string): Outcome[] {
  try {
    return outcomesOf(file);
  } catch (error) {
    return [{ file, failure: error instanceof Error ? (error.stack ?? error.message) : String(error) }];
  }
}
