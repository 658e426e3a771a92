/** Reading, migrating and refusing a saved document of any kind. */
import type * as z from "zod/mini";
import { fieldAt } from "../fields/allFields";
import { extentRefusal } from "./fileLimits";

export interface Fault {
  /** dotted path, empty for the document itself */
  path: string;
  /** one sentence that names the field, the value and the remedy */
  message: string;
}

export type Refusal = { ok: false; kind: "not-json" | "not-ours" | "too-new" | "invalid"; faults: Fault[] };

export type Reading<Value> = { ok: true; value: Value } | Refusal;

/** Converts a document of one version to the next. */
export type Migration = (document: Record<string, unknown>) => Record<string, unknown>;

export interface DocumentKind<Value> {
  format: string;
  version: number;
  schema: z.ZodMiniType<Value>;
  /** migrations[n] leads from version n to n + 1 */
  migrations: Readonly<Record<number, Migration>>;
}

function refuse(kind: Refusal["kind"], message: string): Refusal {
  return { ok: false, kind, faults: [{ path: "", message }] };
}

/** A value as text for a sentence; objects are not expanded, because a file may be nested to any depth. */
function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value))
    return value.length === 1 ? "a list of 1 entry" : `a list of ${value.length} entries`;
  if (value !== null && typeof value === "object") return "an object";
  const text = typeof value === "string" ? JSON.stringify(value.slice(0, LONGEST_SHOWN)) : String(value);
  return truncated(text, LONGEST_SHOWN);
}

const LONGEST_SHOWN = 60;
const LONGEST_PATH = 200;

/** Shortens text from a file, which may be of any length. */
function truncated(text: string, longest: number): string {
  return text.length > longest ? `${text.slice(0, longest - 3)}…` : text;
}

function valueAtPath(document: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      value !== null && typeof value === "object" && Object.hasOwn(value, key)
        ? (value as Record<PropertyKey, unknown>)[key]
        : undefined,
    document,
  );
}

function fieldName(path: string): string {
  const field = fieldAt(path);
  return field ? `${field.label} (${path})` : path || "The document";
}

type Issue = z.core.$ZodIssue;

const EXPECTED: Record<string, string> = {
  number: "it takes a finite number",
  int: "it must be a whole number",
  boolean: "it takes true or false",
  string: "it takes text",
  array: "it takes a list",
  object: "it takes an object",
};

function listed(options: readonly unknown[]): string {
  return `use ${options.length > 1 ? "one of " : ""}${options.map((option) => JSON.stringify(option)).join(", ")}`;
}

/** “at most 8 entries”; a number's message comes from its field. */
function sizeLimit(issue: Issue): string | null {
  if (issue.code !== "too_big" && issue.code !== "too_small") return null;
  const things = { array: ["entry", "entries"], string: ["character", "characters"] }[issue.origin as string];
  if (!things) return null;
  const [bound, limit] = issue.code === "too_big" ? ["most", issue.maximum] : ["least", issue.minimum];
  return `it takes at ${bound} ${limit} ${things[limit === 1 ? 0 : 1]}`;
}

/** How to correct it. */
function remedy(issue: Issue): string {
  if (issue.code === "invalid_type")
    return EXPECTED[issue.expected] ?? `it takes a value of type ${issue.expected}`;
  if (issue.code === "invalid_value") return listed(issue.values);
  if (issue.code === "invalid_union" && "options" in issue) return listed(issue.options as unknown[]);
  return (
    sizeLimit(issue) ??
    `it ${issue.message.startsWith("must") ? issue.message : `is refused (${issue.message})`}`
  );
}

/** What is wrong, after the field's name. */
function complaint(issue: Issue, value: unknown): string {
  return value === undefined
    ? `is missing: add it; ${remedy(issue)}`
    : `is ${shown(value)}: ${remedy(issue)}`;
}

function faultsOf(issue: Issue, document: unknown): Fault[] {
  if (issue.code === "unrecognized_keys") {
    return issue.keys.slice(0, MOST_FAULTS).map((key) => {
      const path = truncated([...issue.path, key].join("."), LONGEST_PATH);
      return { path, message: `${path} is not a part of this document: remove it or correct its name.` };
    });
  }
  const path = truncated(issue.path.join("."), LONGEST_PATH);
  return [{ path, message: `${fieldName(path)} ${complaint(issue, valueAtPath(document, issue.path))}.` }];
}

function isOurs(json: unknown, format: string): json is Record<string, unknown> {
  return json !== null && typeof json === "object" && "format" in json && json.format === format;
}

/** Why a document of this version is not read; null if it is. */
function versionRefusal(version: unknown, known: number): Refusal | null {
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1)
    return refuse(
      "invalid",
      `The document's version is ${shown(version)}: it must be a whole number of 1 or more.`,
    );
  if (version <= known) return null;
  return refuse(
    "too-new",
    `The document has version ${version}, and this program reads up to ${known}: open it with a newer version of the program.`,
  );
}

/** Applies every migration up to the present version. The documents are not validated yet, so a migration may throw. */
function migrated<Value>(
  kind: DocumentKind<Value>,
  document: Record<string, unknown>,
): Record<string, unknown> {
  let current = document;
  for (let version = Number(document.version); version < kind.version; version++)
    current = { ...kind.migrations[version](current), version: version + 1 };
  return current;
}

/** The library passes its issues as arguments of one call; beyond some hundred thousand, engines throw. */
function checked<Value>(schema: z.ZodMiniType<Value>, document: unknown) {
  try {
    return schema.safeParse(document);
  } catch {
    return null;
  }
}

function validated<Value>(schema: z.ZodMiniType<Value>, document: unknown): Reading<Value> {
  const parsed = checked(schema, document);
  if (!parsed) return refuse("invalid", "The document has too many faults to list: open a backup of it.");
  if (parsed.success) return { ok: true, value: parsed.data };
  return { ok: false, kind: "invalid", faults: firstFaults(parsed.error.issues, document) };
}

const MOST_FAULTS = 20;

/** The first faults, and the number of the others. */
function firstFaults(issues: readonly Issue[], document: unknown): Fault[] {
  const count = issues.reduce(
    (sum, issue) => sum + (issue.code === "unrecognized_keys" ? issue.keys.length : 1),
    0,
  );
  const first = issues
    .slice(0, MOST_FAULTS)
    .flatMap((issue) => faultsOf(issue, document))
    .slice(0, MOST_FAULTS);
  const more = count - first.length;
  if (more <= 0) return first;
  return [...first, { path: "", message: `${more} more ${more === 1 ? "fault follows" : "faults follow"}.` }];
}

/**
 * Reads a document from parsed JSON.
 * @returns the value with defaults filled in, or why it is refused; never throws
 */
export function readDocument<Value>(kind: DocumentKind<Value>, json: unknown): Reading<Value> {
  if (!isOurs(json, kind.format))
    return refuse(
      "not-ours",
      `This is not a ${kind.format} document: its “format” must be “${kind.format}”.`,
    );
  const refusal = versionRefusal(json.version, kind.version);
  if (refusal) return refusal;
  let current: Record<string, unknown>;
  try {
    current = migrated(kind, json);
  } catch {
    return refuse(
      "invalid",
      `The document of version ${json.version} does not match that version's format and cannot be converted: open a backup of it.`,
    );
  }
  return validated(kind.schema, current);
}

/** Where parsing stopped; engines word it differently: “position 17”, or “line 2 column 3”. */
function errorPlace(text: string, reason: unknown): string {
  const said = reason instanceof Error ? reason.message : "";
  const position = said.match(/position (\d+)/)?.[1];
  const line = position ? text.slice(0, Number(position)).split("\n").length : said.match(/line (\d+)/)?.[1];
  return line ? `look at its line ${line}` : "it is of another kind, or was cut short";
}

/** Parses the text of a file, whose first character may be a byte order mark. */
export function readJson(text: string): { ok: true; json: unknown } | Refusal {
  const refusal = extentRefusal(text);
  if (refusal) return refuse("invalid", refusal);
  const plain = text.replace(/^\ufeff/, "");
  try {
    return { ok: true, json: JSON.parse(plain) };
  } catch (reason) {
    return refuse("not-json", `This is not JSON and cannot be read: ${errorPlace(plain, reason)}.`);
  }
}
