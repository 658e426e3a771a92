import { useCallback, useState } from "react";
import type { Fault } from "../design/document";
import { exampleShow } from "../design/examples";
import { MOST_DOCUMENT_BYTES, sizeRefusal } from "../design/fileLimits";
import { commitDrafts } from "../ui/drafts";
import { withScoreKept } from "../workbench/keeping/travellingScore";
import { workbench } from "../workbench/session/session";
import { chooseFile } from "./files";
import type { ComingShow } from "./ReplaceQuestion";

/** Of every Standard MIDI File. */
const MIDI_BEGINNING = "MThd";
const MIDI = "This is a Standard MIDI File: open it in the Score tab.";

export interface RefusedFile {
  name: string;
  faults: readonly Fault[];
}

/** Opens a file into the show; one that is refused changes nothing and says why, and a show is asked about first. */
export function useImport() {
  const [refusal, setRefusal] = useState<RefusedFile | null>(null);
  const [coming, setComing] = useState<ComingShow | null>(null);
  const importFile = useCallback(async (file: File) => {
    const { name } = file;
    const tooLong = sizeRefusal(file.size, MOST_DOCUMENT_BYTES);
    if (tooLong) return setRefusal({ name, faults: [{ path: "", message: tooLong }] });
    commitDrafts();
    const text = await file.text();
    if (text.startsWith(MIDI_BEGINNING)) return setRefusal({ name, faults: [{ path: "", message: MIDI }] });
    const outcome = workbench.importText(text, name);
    if (!outcome.ok) return setRefusal({ name, faults: outcome.faults });
    if ("show" in outcome) {
      const taken = await withScoreKept(outcome.show, outcome.scoreFile);
      if (!taken.ok) return setRefusal({ name, faults: [{ path: "scoreFile", message: taken.message }] });
      setComing({ label: `open ${name}`, name: `“${name}”`, show: taken.show });
    }
    setRefusal(null);
  }, []);
  const askForFile = useCallback(async () => {
    const file = await chooseFile();
    if (file) await importFile(file);
  }, [importFile]);
  const askForExample = () =>
    setComing({ label: "load the example", name: "The pier hall pair", show: exampleShow() });
  return {
    importFile,
    askForFile,
    askForExample,
    refusal,
    forgetRefusal: () => setRefusal(null),
    coming,
    forgetComing: () => setComing(null),
  };
}
