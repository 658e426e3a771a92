/** What every kind of saved document shares: how it is read, migrated and refused. */
import type { z } from "zod";
import { fieldAt } from "./fields";

export interface Fault {
  /** dotted path, empty for the document itself */
  path: string;
  /** one sentence that names the field, the value and the remedy */
  message: string;
}

export type Refusal = { ok: false; kind: "not-json" | "not-ours" | "too-new" | "invalid"; faults: Fault[] };

export type Reading<Value> = { ok: true; value: Value } | Refusal;

/** Turns a document of one version into one of the next. */
export type Migration = (document: Record<string, unknown>) => Record<string, unknown>;

export interface DocumentKind<Value> {
  format: string;
  version: number;
  schema: z.ZodType<Value>;
  /** migrations[n] leads from version n to n + 1 */
  migrations: Readonly<Record<number, Migration>>;
}

function refuse(kind: Refusal["kind"], message: string): Refusal {
  return { ok: false, kind, faults: [{ path: "", message }] };
}

/** A value as a sentence may hold it; never walked into, because a file may be nested without end. */
function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value))
    return value.length === 1 ? "a list of 1 entry" : `a list of ${value.length} entries`;
  if (value !== null && typeof value === "object") return "an object";
  const text = typeof value === "string" ? JSON.stringify(value) : String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

function valueAtPath(document: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      value !== null && typeof value === "object" ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    document,
  );
}

function named(path: string): string {
  const field = fieldAt(path);
  return field ? `${field.label} (${path})` : path || "The document";
}

type Issue = z.core.$ZodIssue;

const EXPECTED: Record<string, string> = {
  number: "it takes a finite number",
  int: "it must be a whole number",
  boolean: "it takes true or false",
  string: "it takes a text",
  array: "it takes a list",
  object: "it takes an object",
};

function listed(words: readonly unknown[]): string {
  return `use ${words.length > 1 ? "one of " : ""}${words.map((word) => JSON.stringify(word)).join(", ")}`;
}

/** “at most 8 entries”; the message of a number is its field's own. */
function sizeLimit(issue: Issue): string | null {
  if (issue.code !== "too_big" && issue.code !== "too_small") return null;
  const things = { array: ["entry", "entries"], string: ["character", "characters"] }[issue.origin as string];
  if (!things) return null;
  const [word, limit] = issue.code === "too_big" ? ["most", issue.maximum] : ["least", issue.minimum];
  return `it takes at ${word} ${limit} ${things[limit === 1 ? 0 : 1]}`;
}

/** What to do about it. */
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
    return issue.keys.map((key) => {
      const path = [...issue.path, key].join(".");
      return { path, message: `${path} is not a part of this document: remove it or correct its name.` };
    });
  }
  const path = issue.path.join(".");
  return [{ path, message: `${named(path)} ${complaint(issue, valueAtPath(document, issue.path))}.` }];
}

function isOurs(json: unknown, format: string): json is Record<string, unknown> {
  return json !== null && typeof json === "object" && "format" in json && json.format === format;
}

/** Why a document of this version is not read, null where it is. */
function versionRefusal(version: unknown, known: number): Refusal | null {
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1)
    return refuse(
      "invalid",
      `The document's version is ${shown(version)}: it should be a whole number from 1.`,
    );
  if (version <= known) return null;
  return refuse(
    "too-new",
    `The document has version ${version}, this program knows ${known}: open it with a newer one.`,
  );
}

/** Every step up to the present version; a step meets documents that nothing has checked yet and may throw. */
function migrated<Value>(
  kind: DocumentKind<Value>,
  document: Record<string, unknown>,
): Record<string, unknown> {
  let current = document;
  for (let version = Number(document.version); version < kind.version; version++)
    current = { ...kind.migrations[version](current), version: version + 1 };
  return current;
}

function validated<Value>(schema: z.ZodType<Value>, document: unknown): Reading<Value> {
  const parsed = schema.safeParse(document);
  if (parsed.success) return { ok: true, value: parsed.data };
  const faults = parsed.error.issues.flatMap((issue) => faultsOf(issue, document));
  return { ok: false, kind: "invalid", faults };
}

/**
 * Reads a document that is already JSON data.
 * @returns the value with defaults filled in, or why it is refused; never throws
 */
export function readDocument<Value>(kind: DocumentKind<Value>, json: unknown): Reading<Value> {
  if (!isOurs(json, kind.format))
    return refuse(
      "not-ours",
      `This is not a ${kind.format} document: its “format” should be “${kind.format}”.`,
    );
  const refusal = versionRefusal(json.version, kind.version);
  if (refusal) return refusal;
  let current: Record<string, unknown>;
  try {
    current = migrated(kind, json);
  } catch {
    return refuse(
      "invalid",
      `The document of version ${json.version} has not the shape of that version and cannot be brought up to date: open a backup of it.`,
    );
  }
  return validated(kind.schema, current);
}

/** Parses the text of a file, whose first character may be a byte order mark. */
export function readJson(text: string): { ok: true; json: unknown } | Refusal {
  try {
    return { ok: true, json: JSON.parse(text.replace(/^\ufeff/, "")) };
  } catch (reason) {
    const detail = reason instanceof Error ? reason.message : String(reason);
    return refuse("not-json", `This is not JSON and cannot be read: ${detail}.`);
  }
}
