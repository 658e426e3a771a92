import { type Design, fileName } from "../design/design";
import { burstNetlistOf, responseNetlistOf } from "../evaluation/netlist";
import type { TextFile } from "../workbench/documents";
import { workbench } from "../workbench/session";

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

/** Hands a text to the browser as a file to keep. */
function saveFile({ fileName, text }: TextFile, type = "application/json") {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  URL.revokeObjectURL(address);
}

export function saveDesign(id: string) {
  saveFile(workbench.exportDesign(id));
}

/** Saves the coupled circuit for a circuit simulator; nothing where the design has none. */
export function saveNetlist(design: Design, kind: "response" | "burst") {
  const netlist = kind === "burst" ? burstNetlistOf(design) : responseNetlistOf(design, true);
  if (!netlist) return;
  const name = fileName(design.title, "design").replace(/\.coilwright-design\.json$/, ` ${kind}.cir`);
  saveFile({ fileName: name, text: netlist.text }, "text/plain");
}

export function saveShow() {
  saveFile(workbench.exportShow());
}

/** What the browser keeps under this app's name, readable or not. */
export function saveKept() {
  const kept = workbench.keptFile();
  if (kept) saveFile(kept);
}
