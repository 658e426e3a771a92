/** Creating, copying, renaming, deleting, importing and exporting designs and shows. */
import type { TopLoad } from "../../calc/design-parts";
import { type Design, fileName, parseDesign, serialiseDesign } from "../../design/design";
import { type Fault, readJson } from "../../design/document";
import { exampleShow } from "../../design/examples";
import type { ScoreFile } from "../../design/scoreFile";
import { parseExportedShow, type Show, serialiseShow } from "../../design/show";
import type { LoadedShow } from "../keeping/loadedShow";
import { showInRescue } from "../keeping/rescueFile";
import type { VersionMaking } from "../keeping/versionMaking";
import type { Editing } from "./editing";
import { freeTitle, startingDesign, withAddedDesign, withDesign, withoutDesign } from "./showEdits";

export interface TextFile {
  fileName: string;
  text: string;
}

export type ImportOutcome =
  | { ok: true }
  /** a show was read; nothing is changed before the user decides about the present one */
  | { ok: true; show: Show; scoreFile: ScoreFile | null }
  | { ok: false; faults: readonly Fault[] };

export interface Documents {
  newDesign(): void;
  duplicateDesign(id: string): void;
  renameDesign(id: string, title: string): void;
  renameShow(name: string): void;
  /** Deletes a design; if it was the last one, a starting design replaces it. */
  deleteDesign(id: string): void;
  /** Adds and opens the design in a file, in one step; a show in a file is only read. */
  importText(text: string, fileName: string): ImportOutcome;
  /** Replaces the present show, which is saved as a version, in one step. */
  replaceShow(label: string, show: Show): void;
  /** Adds the designs of a show to the present ones, in one step. */
  addDesignsOf(label: string, show: Show): void;
  /** @throws if no design has the id */
  exportDesign(id: string): TextFile;
  /** @param scoreFile the bytes of its score, if available */
  exportShow(scoreFile?: ScoreFile): TextFile;
  /** Uses a top load, such as a candidate of the line-up, in the open design. */
  adoptTopLoad(topLoad: TopLoad): void;
  /** Replaces the show by the worked example, in one step that can be undone. */
  resetToExamples(): void;
}

type Imported =
  | { ok: true; kind: "design"; design: Design }
  | { ok: true; kind: "show"; show: Show; scoreFile: ScoreFile | null }
  | { ok: false; faults: readonly Fault[] };

function withNewDesign(show: Show, id: string, design: Design): Show {
  return withAddedDesign(show, id, { ...design, title: freeTitle(show, design.title) });
}

function readKept(kept: LoadedShow): Imported {
  if (kept.kind === "ok") return { ok: true, kind: "show", show: kept.show, scoreFile: null };
  const message =
    kept.kind === "nothing" ? "This file contains no show: choose another file." : kept.sentence;
  return { ok: false, faults: [{ path: "", message }] };
}

function read(text: string): Imported {
  const json = readJson(text);
  if (!json.ok) return json;
  const kept = showInRescue(json.json);
  if (kept) return readKept(kept);
  const design = parseDesign(json.json);
  if (design.ok) return { ok: true, kind: "design", design: design.design };
  if (design.kind !== "not-ours") return design;
  const show = parseExportedShow(json.json);
  if (show.ok) return { ...show, kind: "show" };
  if (show.kind !== "not-ours") return show;
  return {
    ok: false,
    faults: [
      {
        path: "format",
        message:
          "This file is neither a design nor a show of this app: its “format” must be “coilwright-design” or “coilwright-show”.",
      },
    ],
  };
}

function inFile(name: string, faults: readonly Fault[]): readonly Fault[] {
  return faults.map((fault) => ({ ...fault, message: `${name}: ${fault.message}` }));
}

/** Creates the document actions; `readOnly` returns why nothing may be changed, or null. */
export function newDocuments(
  editing: Pick<Editing, "edit" | "editShow">,
  making: Pick<VersionMaking, "showReplaced">,
  present: () => Show,
  newId: () => string,
  readOnly: () => string | null,
): Documents {
  const add = (label: string, design: (show: Show) => Design) =>
    editing.editShow(label, (show) => withAddedDesign(show, newId(), design(show)));
  const replaceShow: Documents["replaceShow"] = (label, next) => {
    if (readOnly() !== null) return;
    making.showReplaced(label, next);
    editing.editShow(label, () => next);
  };
  return {
    newDesign: () => add("new design", (show) => startingDesign(freeTitle(show, "New design"))),
    duplicateDesign(id) {
      const original = present().designs[id];
      if (!original) return;
      add("duplicate design", (show) => ({ ...original, title: freeTitle(show, `${original.title}, copy`) }));
    },
    renameDesign(id, title) {
      const original = present().designs[id];
      if (original) editing.editShow("rename design", (show) => withDesign(show, id, { ...original, title }));
    },
    renameShow: (name) => editing.editShow("rename show", (show) => ({ ...show, name })),
    deleteDesign: (id) => editing.editShow("delete design", (show) => withoutDesign(show, id, newId())),
    importText(text, name) {
      const reason = readOnly();
      if (reason !== null) return { ok: false, faults: [{ path: "", message: reason }] };
      const imported = read(text);
      if (!imported.ok) return { ok: false, faults: inFile(name, imported.faults) };
      if (imported.kind === "show") return { ok: true, show: imported.show, scoreFile: imported.scoreFile };
      editing.editShow(`open ${name}`, (show) => withNewDesign(show, newId(), imported.design));
      return { ok: true };
    },
    exportDesign(id) {
      const design = present().designs[id];
      if (!design) throw new Error(`no design has the id “${id}”`);
      return { fileName: fileName(design.title, "design"), text: serialiseDesign(design) };
    },
    exportShow(scoreFile) {
      const show = present();
      return { fileName: fileName(show.name, "show"), text: serialiseShow(show, scoreFile) };
    },
    adoptTopLoad: (topLoad) => editing.edit("use top load", (design) => ({ ...design, topLoad })),
    replaceShow,
    addDesignsOf: (label, { order, designs }) =>
      editing.editShow(label, (present) => {
        const added = order.reduce((show, id) => withNewDesign(show, newId(), designs[id]), present);
        return added === present ? present : { ...added, open: added.order[present.order.length] };
      }),
    resetToExamples: () => replaceShow("load the example", exampleShow()),
  };
}
