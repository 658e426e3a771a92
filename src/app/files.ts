import { fileStem } from "../design/fileName";
import type { Netlist } from "../evaluation/response/netlist";
import { saveFile } from "../ui/saveFile";
import { newNetlistFiles } from "../workbench/background/netlistFiles";
import type { NetlistRequest } from "../workbench/background/netlistJob";
import { scoreFileOf } from "../workbench/keeping/travellingScore";
import type { TextFile } from "../workbench/session/documents";
import { type Notice, withNotice, withoutNotice } from "../workbench/session/notice";
import { session, workbench } from "../workbench/session/session";
import { settleDrafts } from "./settleDrafts";

/** Asks for one JSON file with the browser's file dialog; null if none was chosen. */
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

const WITHOUT_NETLIST: Notice = {
  id: "no-netlist",
  severity: "warning",
  sentence:
    "No netlist was written, because the coupled circuit of this design has no solution; see the findings.",
  details: [],
  waysOut: ["dismiss"],
};

function saveNetlistFile(netlist: Netlist | null, { design, kind }: NetlistRequest) {
  session.store.setState(({ notices }) => ({
    notices: netlist ? withoutNotice(notices, WITHOUT_NETLIST.id) : withNotice(notices, WITHOUT_NETLIST),
  }));
  if (netlist) saveFile(`${fileStem(design.title)}-${kind}.cir`, netlist.text, "text/plain");
}

const netlistFiles = { response: newNetlistFiles(saveNetlistFile), burst: newNetlistFiles(saveNetlistFile) };

/** Exports the coupled circuit of a design for a circuit simulator; a notice says so if the design has none. */
export function saveNetlist(id: string, kind: "response" | "burst") {
  settleDrafts(id);
  netlistFiles[kind].insist({ kind, design: session.store.getState().history.present.designs[id] });
}

const WITHOUT_SCORE: Notice = {
  id: "show-without-score",
  severity: "warning",
  sentence:
    "The show was exported without its score, because the score's file is not stored in this browser: open the file again under Score, then export the show again.",
  details: [],
  waysOut: ["dismiss"],
};

/** Exports the show with its score; if the score's bytes are missing, a notice says so. */
export async function saveShow() {
  settleDrafts();
  const show = session.store.getState().history.present;
  const scoreFile = await scoreFileOf(show);
  saveDocument(workbench.exportShow(scoreFile ?? undefined));
  const isScoreMissing = show.score !== null && scoreFile === null;
  session.store.setState(({ notices }) => ({
    notices: isScoreMissing ? withNotice(notices, WITHOUT_SCORE) : withoutNotice(notices, WITHOUT_SCORE.id),
  }));
}

/** Exports everything that the browser stores for this app, readable or not. */
export function saveKept() {
  const kept = workbench.keptFile();
  if (kept) saveDocument(kept);
}
