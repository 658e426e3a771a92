import { useEffect, useState } from "react";
import type { VersionSummary } from "../../workbench/keeping/version";
import { workbench } from "../../workbench/session/session";
import type { ReadVersion, VersionDocument } from "./versionDocument";

interface KeptVersions {
  /** newest first; null until loaded */
  versions: readonly VersionSummary[] | null;
  /** why they cannot be read; empty without an error */
  error: string;
  seenAt: Date;
}

/** The saved versions, updated when they change. */
export function useVersions(): KeptVersions {
  const [kept, setKept] = useState<KeptVersions>(() => ({ versions: null, error: "", seenAt: new Date() }));
  useEffect(() => {
    let latest = 0;
    const load = async () => {
      const number = ++latest;
      const found = await workbench.versions.list().then(
        (versions) => ({ versions, error: "" }),
        (error: unknown) => ({ versions: [], error: error instanceof Error ? error.message : "" }),
      );
      if (number === latest) setKept({ ...found, seenAt: new Date() });
    };
    void load();
    const end = workbench.versions.listen(() => void load());
    return () => {
      latest = Number.NaN;
      end();
    };
  }, []);
  return kept;
}

/** The document of a version; null while it is read, or without an id. */
export function useVersionDocument(id: string | null, read: ReadVersion): VersionDocument | null {
  const [found, setFound] = useState<{ id: string; document: VersionDocument } | null>(null);
  useEffect(() => {
    if (id === null) return;
    let mounted = true;
    void read(id).then((document) => mounted && setFound({ id, document }));
    return () => {
      mounted = false;
    };
  }, [id, read]);
  return found && found.id === id ? found.document : null;
}
