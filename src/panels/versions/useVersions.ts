import { useEffect, useState } from "react";
import type { VersionSummary } from "../../workbench/keeping/version";
import { workbench } from "../../workbench/session/session";
import type { ReadVersion, VersionDocument } from "./versionDocument";

interface KeptVersions {
  /** newest first; null until they are there */
  versions: readonly VersionSummary[] | null;
  /** why there are none to see; empty where all is well */
  trouble: string;
  seenAt: Date;
}

/** The versions that are kept, followed as they come and go. */
export function useVersions(): KeptVersions {
  const [kept, setKept] = useState<KeptVersions>(() => ({ versions: null, trouble: "", seenAt: new Date() }));
  useEffect(() => {
    let asked = 0;
    const look = async () => {
      const number = ++asked;
      const found = await workbench.versions.list().then(
        (versions) => ({ versions, trouble: "" }),
        (error: unknown) => ({ versions: [], trouble: error instanceof Error ? error.message : "" }),
      );
      if (number === asked) setKept({ ...found, seenAt: new Date() });
    };
    void look();
    const end = workbench.versions.listen(() => void look());
    return () => {
      asked = Number.NaN;
      end();
    };
  }, []);
  return kept;
}

/** What a version holds; null while it is being read, or where none is asked for. */
export function useVersionDocument(id: string | null, read: ReadVersion): VersionDocument | null {
  const [found, setFound] = useState<{ id: string; document: VersionDocument } | null>(null);
  useEffect(() => {
    if (id === null) return;
    let wanted = true;
    void read(id).then((document) => wanted && setFound({ id, document }));
    return () => {
      wanted = false;
    };
  }, [id, read]);
  return found && found.id === id ? found.document : null;
}
