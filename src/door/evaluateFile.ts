import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { type ParsedDesign, parseDesign } from "../design/design";
import { evaluate } from "../evaluation/evaluate";
import type { Evaluation } from "../evaluation/evaluation";
import { findingMessage } from "../evaluation/findingMessage";
import type { Outcome, PrintedEvaluation } from "./outcome";

/** npm runs a script in the project's folder and says where it was called. */
export function fromCaller(path: string): string {
  return resolve(process.env.INIT_CWD ?? process.cwd(), path);
}

function printed(evaluation: Evaluation): PrintedEvaluation {
  const findings = evaluation.findings.map((finding) => ({
    ...finding,
    message: findingMessage(finding, "metric"),
  }));
  return { ...evaluation, findings };
}

/** A design from a file, or why it is none. */
export function readDesign(file: string): ParsedDesign {
  let text: string;
  try {
    text = readFileSync(fromCaller(file), "utf8");
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return {
      ok: false,
      kind: "not-json",
      faults: [{ path: "", message: `The file cannot be read: ${reason}.` }],
    };
  }
  return parseDesign(text);
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
