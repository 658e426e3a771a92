import { type Design, parseDesign } from "../../design/design";
import { parseShow, type Show } from "../../design/show";
import type { KeptVersion } from "../../workbench/keeping/version";

/** The document of a version. */
export type VersionDocument =
  | { kind: "design"; design: Design }
  | { kind: "show"; show: Show }
  /** it can only be exported */
  | { kind: "unreadable"; sentence: string };

const GONE = "This version no longer exists.";

/** Reads a version's text; if this program cannot read it, a sentence says why. */
export function versionDocument(version: KeptVersion | null): VersionDocument {
  if (!version) return { kind: "unreadable", sentence: GONE };
  const parsed = version.kind === "design" ? parseDesign(version.text) : parseShow(version.text);
  if (!parsed.ok) {
    const [fault] = parsed.faults;
    return {
      kind: "unreadable",
      sentence: `This version cannot be opened here: ${fault?.message ?? ""}`.trim(),
    };
  }
  return "design" in parsed ? { kind: "design", design: parsed.design } : { kind: "show", show: parsed.show };
}

export type ReadVersion = (id: string) => Promise<VersionDocument>;

/** Reads each version once, because a version never changes. */
export function newVersionReader(read: (id: string) => Promise<KeptVersion | null>): ReadVersion {
  const known = new Map<string, Promise<VersionDocument>>();
  return (id) => {
    const reading =
      known.get(id) ??
      read(id).then(versionDocument, (error: unknown) => ({
        kind: "unreadable" as const,
        sentence: error instanceof Error ? error.message : GONE,
      }));
    known.set(id, reading);
    return reading;
  };
}
