import { useCallback, useState } from "react";
import type { Fault } from "../design/document";
import { exampleShow } from "../design/examples";
import { MOST_DOCUMENT_BYTES, sizeRefusal } from "../design/fileLimits";
import { commitDrafts } from "../ui/drafts";
import { withScoreKept } from "../workbench/keeping/travellingScore";
import { workbench } from "../workbench/session/session";
import { chooseFile } from "./files";
import type { IncomingShow } from "./ReplaceDialog";

/** First bytes of every Standard MIDI File. */
const MIDI_SIGNATURE = "MThd";
const MIDI_REFUSAL = "This is a Standard MIDI File: open it in the Score tab.";

export interface RefusedFile {
  name: string;
  faults: readonly Fault[];
}

/** Opens a file into the show. A refused file changes nothing and the refusal says why; a show needs confirmation. */
export function useImport() {
  const [refusal, setRefusal] = useState<RefusedFile | null>(null);
  const [incoming, setIncoming] = useState<IncomingShow | null>(null);
  const importFile = useCallback(async (file: File) => {
    const { name } = file;
    const tooLong = sizeRefusal(file.size, MOST_DOCUMENT_BYTES);
    if (tooLong) return setRefusal({ name, faults: [{ path: "", message: tooLong }] });
    commitDrafts();
    const text = await file.text();
    if (text.startsWith(MIDI_SIGNATURE))
      return setRefusal({ name, faults: [{ path: "", message: MIDI_REFUSAL }] });
    const outcome = workbench.importText(text, name);
    if (!outcome.ok) return setRefusal({ name, faults: outcome.faults });
    if ("show" in outcome) {
      const stored = await withScoreKept(outcome.show, outcome.scoreFile);
      if (!stored.ok) return setRefusal({ name, faults: [{ path: "scoreFile", message: stored.message }] });
      setIncoming({ label: `open ${name}`, name: `“${name}”`, show: stored.show });
    }
    setRefusal(null);
  }, []);
  const askForFile = useCallback(async () => {
    const file = await chooseFile();
    if (file) await importFile(file);
  }, [importFile]);
  const askForExample = () =>
    setIncoming({ label: "load the example", name: "The pier hall pair", show: exampleShow() });
  return {
    importFile,
    askForFile,
    askForExample,
    refusal,
    forgetRefusal: () => setRefusal(null),
    incoming,
    forgetIncoming: () => setIncoming(null),
  };
}
