/**
 * The page that stands in for the program where it cannot be shown: plain elements and no library, so
 * that nothing the program fails by can fail it too. It reads what is kept and deletes nothing.
 */
import { element } from "./element";
import { everythingKept, safeFileName, saveFile, versionFile } from "./exportKept";
import { discardProgram } from "./fetchAnew";
import { type KeptVersion, keptVersions } from "./keptVersions";
import { openVersion } from "./openVersion";
import { readEntries } from "./readKept";
import { readStores } from "./readStores";

export interface Happening {
  kind: "asked" | "not loaded" | "failed";
  error?: unknown;
}

const WHAT_HAPPENED: Record<Happening["kind"], string> = {
  asked: "This page works without the program. It reads what this browser keeps and deletes nothing.",
  "not loaded":
    "The program did not start: a part of it is missing or failed. The network may be away, or a newer version stand on the server.",
  failed: "The program failed while it was being shown. What was saved is kept and stands below.",
};

/** Loads the page again with the program. */
function startProgram() {
  history.replaceState(null, "", window.location.pathname + window.location.search);
  window.location.reload();
}

/** Says what came of a press; polite, so that it is read out. */
function newAnswer() {
  return element("p", { class: "safe-answer", role: "status" });
}

function button(label: string, press: () => void | Promise<void>, name = label): HTMLButtonElement {
  const made = element("button", { type: "button", "aria-label": name }, label);
  made.addEventListener("click", () => void press());
  return made;
}

function details(happening: Happening): HTMLElement | null {
  if (happening.error === undefined) return null;
  const { error } = happening;
  const text = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return element("details", {}, element("summary", {}, "Details"), element("pre", {}, text));
}

function programBlock(): HTMLElement {
  const told = newAnswer();
  const anew = async () => {
    told.textContent = "Fetching the program …";
    const refusal = await discardProgram().catch(
      () => "The browser refused to discard its copy of the program.",
    );
    if (refusal === null) startProgram();
    else told.textContent = refusal;
  };
  return element(
    "section",
    {},
    element("h2", {}, "The program"),
    element(
      "p",
      {},
      "Fetching it again discards the copy that this browser keeps for use without a network. Designs stay.",
    ),
    element(
      "p",
      { class: "safe-ways" },
      button("Start the program", startProgram),
      button("Fetch the program again", anew),
    ),
    told,
  );
}

function dateOf({ at }: KeptVersion): string {
  return at === ""
    ? "date unknown"
    : new Date(at).toLocaleString("en-GB", { dateStyle: "medium", timeStyle: "medium" });
}

function row(version: KeptVersion, tell: (sentence: string) => void): HTMLElement {
  const open = async () => {
    tell("Opening …");
    const refusal = await openVersion(version, new Date()).catch(() => "The version could not be written.");
    if (refusal === null) startProgram();
    else tell(refusal);
  };
  const isPresent = version.origin === "present";
  const called = `${version.title}, ${dateOf(version)}`;
  const oneByOne = version.kind === "show" ? version.designs : [];
  const exportDesign = ({ title, document }: KeptVersion["designs"][number]) =>
    button(
      title,
      () =>
        saveFile({
          fileName: safeFileName(title, "coilwright-design.json"),
          text: `${JSON.stringify(document, null, 2)}\n`,
        }),
      `Export the design ${title} of ${called}`,
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
      isPresent || version.kind === "unreadable" ? null : button("Open this version", open, `Open ${called}`),
      button("Export", () => saveFile(versionFile(version)), `Export ${called}`),
      oneByOne.length > 0 ? element("span", { class: "safe-known" }, "or one design:") : null,
      ...oneByOne.map(exportDesign),
    ),
  );
}

function keptBlock(versions: readonly KeptVersion[]): HTMLElement {
  const told = newAnswer();
  const exportAll = async () => {
    const now = new Date();
    saveFile({
      fileName: `coilwright-kept-${now.toISOString().slice(0, 10)}.json`,
      text: await everythingKept(now),
    });
    told.textContent = "Exported: one file with all that this browser keeps, scores included.";
  };
  return element(
    "section",
    {},
    element("h2", {}, "Kept in this browser"),
    element(
      "p",
      {},
      versions.length === 0
        ? "Nothing is kept in this browser, or it may not be read."
        : "Opening a version starts the program with it; the present show is set aside first.",
    ),
    element("p", { class: "safe-ways" }, button("Export everything", exportAll)),
    told,
    element(
      "ul",
      { class: "safe-list" },
      ...versions.map((version) =>
        row(version, (sentence) => {
          told.textContent = sentence;
        }),
      ),
    ),
  );
}

/** Puts the safe page in place of whatever stands. */
export async function showSafePage(happening: Happening): Promise<void> {
  const waiting = element("p", { role: "status" }, "Reading what is kept …");
  const page = element(
    "main",
    { class: "safe" },
    element("h1", {}, "Coilwright, safe page"),
    element("p", happening.kind === "asked" ? {} : { role: "alert" }, WHAT_HAPPENED[happening.kind]),
    details(happening),
    programBlock(),
    waiting,
  );
  document.body.replaceChildren(page);
  waiting.replaceWith(keptBlock(keptVersions(readEntries(), await readStores())));
}
