import { fileStem } from "../design/fileName";
import { burstNetlistOf, responseNetlistOf } from "../evaluation/netlist";
import { saveFile } from "../ui/saveFile";
import type { TextFile } from "../workbench/documents";
import { session, workbench } from "../workbench/session";
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

/** Saves the coupled circuit of a design for a circuit simulator; nothing where the design has none. */
export function saveNetlist(id: string, kind: "response" | "burst") {
  settleDrafts(id);
  const design = session.store.getState().history.present.designs[id];
  const netlist = kind === "burst" ? burstNetlistOf(design) : responseNetlistOf(design, true);
  if (!netlist) return;
  saveFile(`${fileStem(design.title)}-${kind}.cir`, netlist.text, "text/plain");
}

export function saveShow() {
  settleDrafts();
  saveDocument(workbench.exportShow());
}

/** What the browser keeps under this app's name, readable or not. */
export function saveKept() {
  const kept = workbench.keptFile();
  if (kept) saveDocument(kept);
}
