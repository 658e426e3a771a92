import { type ParsedDesign, parseDesign } from "../design/design";
import { MOST_DOCUMENT_BYTES } from "../design/fileLimits";
import { evaluate } from "../evaluation/evaluate";
import type { Evaluation } from "../evaluation/evaluation";
import { findingMessage } from "../evaluation/findingMessage";
import type { Outcome, PrintedEvaluation } from "./outcome";
import { readInput } from "./readInput";

function printed(evaluation: Evaluation): PrintedEvaluation {
  const findings = evaluation.findings.map((finding) => ({
    ...finding,
    message: findingMessage(finding, "metric"),
  }));
  return { ...evaluation, findings };
}

/** A design from a file, or why it is none. */
export function readDesign(file: string): ParsedDesign {
  const read = readInput(file, MOST_DOCUMENT_BYTES);
  if (!read.ok) return { ok: false, kind: "not-json", faults: [{ path: "", message: read.message }] };
  return parseDesign(read.bytes.toString("utf8"));
}

/** Reads and evaluates one file; whatever happens, it returns. */
export function evaluateFile(file: string): Outcome {
  try {
    const read = readDesign(file);
    if (!read.ok) return { file, faults: read.faults };
    return { file, evaluation: printed(evaluate(read.design)) };
  } catch (error) {
    return { file, failure: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}
