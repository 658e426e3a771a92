import type { Design } from "../design/design";
import { evaluate } from "../evaluation/evaluate";
import { findingMessage } from "../evaluation/findings/findingMessage";
import { burstNetlistOf, responseNetlistOf } from "../evaluation/response/netlist";
import { isFolder } from "./arguments";
import { type Answer, oneLine } from "./evaluateCommand";
import { readDocument } from "./readDocument";

const USAGE = "Usage: npm run --silent evaluate -- --netlist response|burst [--loaded] design.json";

type Kind = "response" | "burst";

type AskedNetlist = { ok: true; file: string; kind: Kind; loaded: boolean } | { ok: false; message: string };

/** Whether the arguments ask for a netlist instead of an evaluation. */
export function asksForNetlist(given: string[]): boolean {
  return given.includes("--netlist") || given.includes("--loaded");
}

function isKind(kind: string | undefined): kind is Kind {
  return kind === "response" || kind === "burst";
}

function misused(kind: string | undefined, rest: string[]): string | null {
  if (kind === undefined) return "The option --loaded goes with --netlist response.";
  if (!isKind(kind)) return `A netlist “${kind}” is not known; “response” and “burst” are.`;
  const option = rest.find((argument) => argument.startsWith("-"));
  if (option) return `The option ${option} is not known.`;
  if (rest.length === 0) return "No design is named.";
  if (rest.length > 1) return "A netlist is written of one design, and several files are named: name one.";
  if (isFolder(rest[0]))
    return `A netlist is written of one design, and ${rest[0]} is a folder: name a file.`;
  return null;
}

function readNetlistArguments(given: string[]): AskedNetlist {
  const at = given.indexOf("--netlist");
  const kind = at < 0 ? undefined : (given[at + 1] ?? "");
  const others = at < 0 ? given : given.filter((_, index) => index !== at && index !== at + 1);
  const rest = others.filter((argument) => argument !== "--loaded");
  const misuse = misused(kind, rest);
  if (misuse || !isKind(kind)) return { ok: false, message: `${misuse} ${USAGE}` };
  return { ok: true, file: rest[0], kind, loaded: others.includes("--loaded") };
}

function refused(...complaints: string[]): Answer {
  return { exitCode: 2, output: "", complaints: complaints.map(oneLine) };
}

/** The refusal of a design whose network has no solution, with its errors. */
function unsolved(file: string, design: Design): Answer {
  const errors = evaluate(design).findings.filter(({ severity }) => severity === "error");
  return refused(
    `${file}: no netlist is written, because the coupled network of this design has no solution.`,
    ...errors.map((finding) => `${file}: ${findingMessage(finding, "metric")}`),
  );
}

/** One design's response, or its burst with its spark, as a SPICE netlist; see README.md for the usage. */
export function netlistCommand(given: string[]): Answer {
  const asked = readNetlistArguments(given);
  if (!asked.ok) return refused(asked.message);
  const { file, kind, loaded } = asked;
  const read = readDocument(file);
  if (read.kind === "refused") return refused(...read.faults.map(({ message }) => `${file}: ${message}`));
  if (read.kind === "show")
    return refused(
      `${file}: a netlist is written of one design, and this is a show: export the design alone.`,
    );
  const netlist = kind === "burst" ? burstNetlistOf(read.design) : responseNetlistOf(read.design, loaded);
  if (!netlist) return unsolved(file, read.design);
  return {
    exitCode: 0,
    output: netlist.text,
    complaints: netlist.remarks.map((remark) => `${file}: ${remark}.`),
  };
}
