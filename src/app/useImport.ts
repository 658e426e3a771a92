import { useCallback, useState } from "react";
import type { Fault } from "../design/document";
import { MOST_DOCUMENT_BYTES, sizeRefusal } from "../design/fileLimits";
import { takeDrafts } from "../ui/drafts";
import { workbench } from "../workbench/session";
import { chooseFile } from "./files";

export interface RefusedFile {
  name: string;
  faults: readonly Fault[];
}

/** Opens a file into the show; one that is refused changes nothing and says why. */
export function useImport() {
  const [refusal, setRefusal] = useState<RefusedFile | null>(null);
  const importFile = useCallback(async (file: File) => {
    const tooLong = sizeRefusal(file.size, MOST_DOCUMENT_BYTES);
    if (tooLong) return setRefusal({ name: file.name, faults: [{ path: "", message: tooLong }] });
    takeDrafts();
    const outcome = workbench.importText(await file.text(), file.name);
    setRefusal(outcome.ok ? null : { name: file.name, faults: outcome.faults });
  }, []);
  const askForFile = useCallback(async () => {
    const file = await chooseFile();
    if (file) await importFile(file);
  }, [importFile]);
  return { importFile, askForFile, refusal, forgetRefusal: () => setRefusal(null) };
}
