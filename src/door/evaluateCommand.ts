import { readArguments } from "./arguments";
import { evaluateFiles } from "./evaluateFiles";
import type { Outcome } from "./outcome";

export interface Answer {
  /** 0 for success, 1 for a failure of this program, 2 for an input that is not a valid design */
  exitCode: 0 | 1 | 2;
  /** the JSON document, or empty */
  output: string;
  /** one line per fault, for standard error */
  complaints: string[];
}

function complaintsOf(outcome: Outcome): string[] {
  if ("failure" in outcome) return [`${outcome.file}: this program failed: ${outcome.failure}`];
  if ("faults" in outcome) return outcome.faults.map((fault) => `${outcome.file}: ${oneLine(fault.message)}`);
  return [];
}

/** A complaint may quote a file; control characters in it could command the terminal. */
export function oneLine(text: string): string {
  return text.replace(/[\s\p{Cc}]+/gu, " ");
}

function exitCodeOf(outcomes: Outcome[]): Answer["exitCode"] {
  if (outcomes.some((outcome) => "failure" in outcome)) return 1;
  return outcomes.some((outcome) => "faults" in outcome) ? 2 : 0;
}

/** In a list, a design on which this program failed is printed with a fault, so that no file is missing. */
function listed(outcome: Outcome): object {
  if (!("failure" in outcome)) return outcome;
  return { file: outcome.file, faults: [{ path: "", message: "This program failed on the design." }] };
}

function documentOf(outcomes: Outcome[], single: boolean): string {
  // a show is printed as a list of its coils, even if it has one
  if (!single || "coil" in outcomes[0]) return `${JSON.stringify(outcomes.map(listed), null, 2)}\n`;
  return "evaluation" in outcomes[0] ? `${JSON.stringify(outcomes[0].evaluation, null, 2)}\n` : "";
}

/** Evaluates the named files; see README.md for the usage. */
export async function evaluateCommand(given: string[], program: URL): Promise<Answer> {
  const asked = readArguments(given);
  if (!asked.ok) return { exitCode: 2, output: "", complaints: [asked.message] };
  const outcomes = await evaluateFiles(asked.files, program);
  return {
    exitCode: exitCodeOf(outcomes),
    output: documentOf(outcomes, asked.single),
    complaints: outcomes.flatMap(complaintsOf),
  };
}
