/**
 * The page that replaces the program if it cannot be shown: plain elements and no library, so that the
 * program's failure cannot affect it too. It reads the stored data and deletes nothing.
 */

import { discardProgram } from "./discardProgram";
import { element } from "./element";
import { everythingKept, safeFileName, saveFile, versionFile } from "./exportKept";
import { type KeptVersion, keptVersions } from "./keptVersions";
import { openVersion } from "./openVersion";
import { readEntries } from "./readKept";
import { readStores } from "./readStores";

export interface Reason {
  kind: "asked" | "not loaded" | "failed";
  error?: unknown;
}

const REASON_SENTENCES: Record<Reason["kind"], string> = {
  asked: "This page works without the program. It reads the data stored in this browser and deletes nothing.",
  "not loaded":
    "The program did not start: a part of it is missing or failed. The network may be down, or the server may have a newer version.",
  failed: "The program failed while it was running. Everything that was saved is listed below.",
};

/** Reloads the page with the program. */
function startProgram() {
  history.replaceState(null, "", window.location.pathname + window.location.search);
  window.location.reload();
}

/** A live region for the outcome of an action. */
function newStatus() {
  return element("p", { class: "safe-answer", role: "status" });
}

function button(label: string, press: () => void | Promise<void>, name = label): HTMLButtonElement {
  const made = element("button", { type: "button", "aria-label": name }, label);
  made.addEventListener("click", () => void press());
  return made;
}

function details({ error }: Reason): HTMLElement | null {
  if (error === undefined) return null;
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return element("details", {}, element("summary", {}, "Details"), element("pre", {}, text));
}

function programBlock(): HTMLElement {
  const status = newStatus();
  const download = async () => {
    status.textContent = "Downloading the program …";
    const refusal = await discardProgram().catch(
      () => "The browser did not delete its copy of the program: clear it in the browser's settings.",
    );
    if (refusal === null) startProgram();
    else status.textContent = refusal;
  };
  return element(
    "section",
    {},
    element("h2", {}, "The program"),
    element(
      "p",
      {},
      "Downloading it again replaces the copy in this browser that is used offline. Designs are not affected.",
    ),
    element(
      "p",
      { class: "safe-ways" },
      button("Start program", startProgram),
      button("Download program again", download),
    ),
    status,
  );
}

function dateOf({ at }: KeptVersion): string {
  return at === ""
    ? "date unknown"
    : new Date(at).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "medium" });
}

function row(version: KeptVersion, report: (sentence: string) => void): HTMLElement {
  const open = async () => {
    report("Opening …");
    const refusal = await openVersion(version, new Date()).catch(() => "The version could not be written.");
    if (refusal === null) startProgram();
    else report(refusal);
  };
  const isPresent = version.origin === "present";
  const name = `${version.title}, ${dateOf(version)}`;
  const designs = version.kind === "show" ? version.designs : [];
  const exportDesign = ({ title, document }: KeptVersion["designs"][number]) =>
    button(
      title,
      () =>
        saveFile({
          fileName: safeFileName(title, "coilwright-design.json"),
          text: `${JSON.stringify(document, null, 2)}\n`,
        }),
      `Export the design ${title} of ${name}`,
    );
  const known = [version.kind === "unreadable" ? "" : version.kind, dateOf(version), version.origin];
  return element(
    "li",
    {},
    element("p", { class: "safe-title" }, element("strong", {}, version.title)),
    element("p", { class: "safe-known" }, known.filter((part) => part !== "").join(" · ")),
    element(
      "p",
      { class: "safe-ways" },
      isPresent || version.kind === "unreadable" ? null : button("Open this version", open, `Open ${name}`),
      button("Export", () => saveFile(versionFile(version)), `Export ${name}`),
      designs.length > 0 ? element("span", { class: "safe-known" }, "or one design:") : null,
      ...designs.map(exportDesign),
    ),
  );
}

function keptBlock(versions: readonly KeptVersion[]): HTMLElement {
  const status = newStatus();
  const exportAll = async () => {
    const now = new Date();
    saveFile({
      fileName: `coilwright-kept-${now.toISOString().slice(0, 10)}.json`,
      text: await everythingKept(now),
    });
    status.textContent = "Exported: one file with everything stored in this browser, including scores.";
  };
  return element(
    "section",
    {},
    element("h2", {}, "Stored in this browser"),
    element(
      "p",
      {},
      versions.length === 0
        ? "Nothing is stored in this browser, or the browser denies access to it."
        : "Opening a version starts the program with it; the present show is backed up first.",
    ),
    element("p", { class: "safe-ways" }, button("Export everything", exportAll)),
    status,
    element(
      "ul",
      { class: "safe-list" },
      ...versions.map((version) =>
        row(version, (sentence) => {
          status.textContent = sentence;
        }),
      ),
    ),
  );
}

/** Replaces the whole page with the safe page. */
export async function showSafePage(reason: Reason): Promise<void> {
  const waiting = element("p", { role: "status" }, "Reading stored data …");
  const page = element(
    "main",
    { class: "safe" },
    element("h1", {}, "Coilwright, safe page"),
    element("p", reason.kind === "asked" ? {} : { role: "alert" }, REASON_SENTENCES[reason.kind]),
    details(reason),
    programBlock(),
    waiting,
  );
  document.body.replaceChildren(page);
  waiting.replaceWith(keptBlock(keptVersions(readEntries(), await readStores())));
}
