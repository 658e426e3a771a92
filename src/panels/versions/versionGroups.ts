import type { VersionSummary } from "../../workbench/keeping/version";

export type GroupName = "this design" | "other designs" | "show" | "bin";

export type VersionGroups = Record<GroupName, VersionSummary[]>;

function groupOf({ kind, designId, binned }: VersionSummary, open: string): GroupName {
  if (binned) return "bin";
  if (kind === "show") return "show";
  return designId === open ? "this design" : "other designs";
}

/** Groups the versions by their subject, keeping their order. */
export function versionGroups(versions: readonly VersionSummary[], open: string): VersionGroups {
  const groups: VersionGroups = { "this design": [], "other designs": [], show: [], bin: [] };
  for (const version of versions) groups[groupOf(version, open)].push(version);
  return groups;
}
