import type { NewVersion } from "../../src/workbench/keeping/version";

/** A version of a show on its way into the database, made by the clock. */
export function newVersion(id: string, parts: Partial<NewVersion> = {}): NewVersion {
  return {
    id,
    kind: "show",
    designId: null,
    title: "Show",
    at: "2026-11-01T10:00:00.000Z",
    cause: "during editing",
    binned: false,
    periodic: true,
    offered: false,
    text: "{}",
    ...parts,
  };
}
