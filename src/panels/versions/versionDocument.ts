import { type Design, parseDesign } from "../../design/design";
import { parseShow, type Show } from "../../design/show";
import type { KeptVersion } from "../../workbench/keeping/version";

/** What a version holds, once its text is read. */
export type VersionDocument =
  | { kind: "design"; design: Design }
  | { kind: "show"; show: Show }
  /** it can be exported, and nothing else */
  | { kind: "unreadable"; sentence: string };

const GONE = "This version is no longer kept.";

/** Reads a version's text; what this program cannot read is told in a sentence. */
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
    const asked =
      known.get(id) ??
      read(id).then(versionDocument, (error: unknown) => ({
        kind: "unreadable" as const,
        sentence: error instanceof Error ? error.message : GONE,
      }));
    known.set(id, asked);
    return asked;
  };
}
