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

function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  const text = typeof value === "number" ? String(value) : JSON.stringify(value);
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
};

/** What is wrong, after the field's name and value. */
function complaint(issue: Issue, value: unknown): string {
  if (issue.code === "invalid_type") {
    if (value === undefined) return `is missing: add it (${issue.expected})`;
    return `is ${shown(value)}: ${EXPECTED[issue.expected] ?? `it takes a value of type ${issue.expected}`}`;
  }
  if (issue.code === "invalid_value")
    return `is ${shown(value)}: use one of ${issue.values.map((word) => JSON.stringify(word)).join(", ")}`;
  if (issue.code === "invalid_union") return `is ${shown(value)}: it has a kind or shape that is not known`;
  return `is ${shown(value)}: it ${issue.message.startsWith("must") ? issue.message : `is refused (${issue.message})`}`;
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

function migrated<Value>(
  kind: DocumentKind<Value>,
  document: Record<string, unknown>,
): Record<string, unknown> {
  let current = document;
  for (let version = Number(document.version); version < kind.version; version++) {
    const migration = kind.migrations[version];
    if (!migration) break;
    current = { ...migration(current), version: version + 1 };
  }
  return current;
}

/**
 * Reads a document that is already JSON data.
 * @returns the value with defaults filled in, or why it is refused; never throws
 */
export function readDocument<Value>(kind: DocumentKind<Value>, json: unknown): Reading<Value> {
  if (
    json === null ||
    typeof json !== "object" ||
    Array.isArray(json) ||
    !("format" in json) ||
    json.format !== kind.format
  ) {
    return refuse(
      "not-ours",
      `This is not a ${kind.format} document: its “format” should be “${kind.format}”.`,
    );
  }
  const document = json as Record<string, unknown>;
  if (typeof document.version !== "number" || !Number.isInteger(document.version) || document.version < 1) {
    return refuse(
      "invalid",
      `The document's version is ${shown(document.version)}: it should be a whole number from 1.`,
    );
  }
  if (document.version > kind.version) {
    return refuse(
      "too-new",
      `The document has version ${document.version}, this program knows ${kind.version}: open it with a newer one.`,
    );
  }
  const current = migrated(kind, document);
  const parsed = kind.schema.safeParse(current);
  if (parsed.success) return { ok: true, value: parsed.data };
  return {
    ok: false,
    kind: "invalid",
    faults: parsed.error.issues.flatMap((issue) => faultsOf(issue, current)),
  };
}

/** Parses the text of a file; null with a refusal where it is not JSON. */
export function readJson(text: string): { ok: true; json: unknown } | Refusal {
  try {
    return { ok: true, json: JSON.parse(text) };
  } catch (reason) {
    const detail = reason instanceof Error ? reason.message : String(reason);
    return refuse("not-json", `This is not JSON and cannot be read: ${detail}.`);
  }
}
