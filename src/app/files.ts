import { fileStem } from "../design/fileName";
import { saveFile } from "../ui/saveFile";
import { newNetlistFiles } from "../workbench/background/netlistFiles";
import { scoreFileOf } from "../workbench/keeping/travellingScore";
import type { TextFile } from "../workbench/session/documents";
import { type Notice, withNotice, withoutNotice } from "../workbench/session/notice";
import { session, workbench } from "../workbench/session/session";
import { settleDrafts } from "./settleDrafts";

/** Asks for one JSON file with the browser's own dialog; null where none was chosen. */
export function chooseFile(): Promise<File | null> {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = ".json,application/json";
  return new Promise((resolve) => {
    input.onchange = () => resolve(input.files?.[0] ?? null);
    input.oncancel = () => resolve(null);
    input.click();
  });
}

function saveDocument({ fileName, text }: TextFile) {
  saveFile(fileName, text, "application/json");
}

export function saveDesign(id: string) {
  settleDrafts(id);
  saveDocument(workbench.exportDesign(id));
}

const netlistFiles = newNetlistFiles((text, { design, kind }) =>
  saveFile(`${fileStem(design.title)}-${kind}.cir`, text, "text/plain"),
);

/** Saves the coupled circuit of a design for a circuit simulator; nothing where the design has none. */
export function saveNetlist(id: string, kind: "response" | "burst") {
  settleDrafts(id);
  netlistFiles.insist({ kind, design: session.store.getState().history.present.designs[id] });
}

const WITHOUT_SCORE: Notice = {
  id: "show-without-score",
  severity: "warning",
  sentence:
    "The show was exported without its score, whose notes are not kept in this browser: open the score's file again under Score, and export the show once more.",
  details: [],
  waysOut: ["dismiss"],
};

/** Saves the show with its score; where the score's bytes are not here, a notice says that they do not go along. */
export async function saveShow() {
  settleDrafts();
  const show = session.store.getState().history.present;
  const scoreFile = await scoreFileOf(show);
  saveDocument(workbench.exportShow(scoreFile ?? undefined));
  const lacking = show.score !== null && scoreFile === null;
  session.store.setState(({ notices }) => ({
    notices: lacking ? withNotice(notices, WITHOUT_SCORE) : withoutNotice(notices, WITHOUT_SCORE.id),
  }));
}

/** What the browser keeps under this app's name, readable or not. */
export function saveKept() {
  const kept = workbench.keptFile();
  if (kept) saveDocument(kept);
}
