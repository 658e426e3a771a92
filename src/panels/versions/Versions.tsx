import { useEffect, useMemo, useRef, useState } from "react";
import type { Show } from "../../design/show";
import { titleOf } from "../../design/titleOf";
import { Button } from "../../ui/Button";
import { saveFile } from "../../ui/saveFile";
import { type Tab, Tabs } from "../../ui/Tabs";
import type { VersionSummary } from "../../workbench/keeping/version";
import type { VersionOutcome } from "../../workbench/keeping/versions";
import { useSession, useShow } from "../../workbench/session/hooks";
import { session, workbench } from "../../workbench/session/session";
import { BIN_ADDRESS } from "./binAddress";
import { ConfirmDialog } from "./ConfirmDialog";
import { useVersions } from "./useVersions";
import { VERSION_NAME, VersionDetail } from "./VersionDetail";
import { VersionList } from "./VersionList";
import styles from "./Versions.module.css";
import { newVersionReader } from "./versionDocument";
import { type GroupName, versionGroups } from "./versionGroups";

const GROUPS: readonly { name: GroupName; label: string; empty: string }[] = [
  {
    name: "this design",
    label: "This design",
    empty:
      "There is no earlier version of the open design yet. One is saved when editing begins, every ten minutes during editing, and before the design is replaced.",
  },
  {
    name: "other designs",
    label: "Others",
    empty:
      "There are no earlier versions of other designs yet. They are saved when those designs are edited.",
  },
  {
    name: "show",
    label: "Show",
    empty:
      "There is no earlier version of the show yet. One is saved before another show or the example replaces it, and at intervals during editing.",
  },
  {
    name: "bin",
    label: "Bin",
    empty: "The bin is empty. Deleted and replaced designs are kept here until you empty it.",
  },
];

/** Earlier versions of the designs and of the show, and the bin: to view, compare and restore. */
export function Versions() {
  const { versions, error, seenAt } = useVersions();
  const show = useShow((whole) => whole);
  const readOnly = useSession((session) => session.readOnly);
  const read = useMemo(() => newVersionReader(workbench.versions.read), []);
  const [group, setGroup] = useState<GroupName>(() =>
    window.location.hash === BIN_ADDRESS ? "bin" : "this design",
  );
  const [chosenId, setChosenId] = useState<string | null>(null);
  const [question, setQuestion] = useState<"delete" | "empty" | null>(null);
  const [message, setMessage] = useState("");
  /** the show after a restore, until it is changed again */
  const [restored, setRestored] = useState<Show | null>(null);
  const root = useRef<HTMLDivElement>(null);
  const chosen = versions?.find(({ id }) => id === chosenId) ?? null;
  const groups = versionGroups(versions ?? [], show.open);

  useEffect(() => {
    const follow = () => {
      if (window.location.hash === BIN_ADDRESS) setGroup("bin");
    };
    window.addEventListener("hashchange", follow);
    return () => window.removeEventListener("hashchange", follow);
  }, []);

  // on a narrow screen the version replaces the list, and the focus follows
  useEffect(() => {
    const list = root.current?.querySelector<HTMLElement>("[data-versions]");
    if (chosenId !== null && list && getComputedStyle(list).display === "none")
      document.getElementById(VERSION_NAME)?.focus();
  }, [chosenId]);

  const isUndone = restored !== null && restored !== show;
  useEffect(() => {
    if (!isUndone) return;
    setMessage("");
    setRestored(null);
  }, [isUndone]);

  const choose = (id: string | null) => {
    setMessage("");
    setRestored(null);
    setChosenId(id);
  };
  const backToList = () => {
    const row = chosenId;
    choose(null);
    requestAnimationFrame(() =>
      root.current?.querySelector<HTMLElement>(`[data-version="${CSS.escape(row ?? "")}"]`)?.focus(),
    );
  };
  const report = (outcome: VersionOutcome, done: string) =>
    setMessage(
      outcome.ok ? done : [outcome.sentence, ...outcome.faults.map(({ message }) => message)].join(" "),
    );
  const restore = async (version: VersionSummary) => {
    const outcome = await workbench.versions.restore(version.id);
    report(outcome, `“${titleOf(version)}” is restored.`);
    setRestored(outcome.ok ? session.store.getState().history.present : null);
  };
  const remove = async ({ id }: VersionSummary) => {
    const outcome = await workbench.versions.remove(id);
    if (outcome.ok) setChosenId(null);
    report(outcome, "The version is deleted.");
  };
  const emptyBin = async () => report(await workbench.versions.emptyBin(), "The bin is empty.");
  const exportFile = async ({ id }: VersionSummary) => {
    const file = await workbench.versions.file(id).catch((error: unknown) => String(error));
    if (file === null) setMessage("This version no longer exists.");
    else if (typeof file === "string") setMessage(file);
    else saveFile(file.fileName, file.text, "application/json");
  };

  const tabs = GROUPS.map(
    ({ name, label, empty }): Tab => ({
      id: name,
      label: `${label} (${groups[name].length})`,
      content: (
        <>
          {name === "bin" && groups.bin.length > 0 && (
            <p className={styles.actions}>
              <Button icon="remove" onClick={() => setQuestion("empty")}>
                Empty bin
              </Button>
            </p>
          )}
          <VersionList
            versions={groups[name]}
            chosen={chosenId}
            read={read}
            now={seenAt}
            onChoose={choose}
            empty={empty}
          />
        </>
      ),
    }),
  );

  return (
    <div className={`${styles.versions} ${chosen ? styles.looking : ""}`} ref={root}>
      <h1 className={styles.name}>Versions and bin</h1>
      <div role="status" className={styles.message}>
        {message && !isUndone && (
          <p>
            {message}
            {restored && (
              <Button icon="undo" onClick={workbench.undo}>
                Undo
              </Button>
            )}
          </p>
        )}
      </div>
      {error && <p role="alert">{error}</p>}
      <div className={styles.columns}>
        <div className={styles.lists} data-versions>
          {versions === null ? (
            <p className={styles.empty}>Loading versions …</p>
          ) : (
            <Tabs
              name="Versions"
              tabs={tabs}
              chosen={group}
              onChoose={(id) => {
                setGroup(id as GroupName);
                choose(null);
              }}
            />
          )}
        </div>
        <section className={styles.detail} aria-label="Selected version">
          {chosen ? (
            <>
              <p className={styles.back}>
                <Button icon="up" onClick={backToList}>
                  All versions
                </Button>
              </p>
              <VersionDetail
                version={chosen}
                read={read}
                show={show}
                now={seenAt}
                readOnly={readOnly}
                onRestore={() => void restore(chosen)}
                onExport={() => void exportFile(chosen)}
                onDelete={() => setQuestion("delete")}
              />
            </>
          ) : (
            <p className={styles.empty}>Select a version to see what restoring it would change.</p>
          )}
        </section>
      </div>
      {question === "empty" && (
        <ConfirmDialog
          title="Empty the bin?"
          text={`${groups.bin.length === 1 ? "One design is" : `${groups.bin.length} designs are`} deleted permanently. This cannot be undone.`}
          action="Empty bin"
          onConfirm={() => void emptyBin()}
          onClose={() => setQuestion(null)}
        />
      )}
      {question === "delete" && chosen && (
        <ConfirmDialog
          title="Delete this version permanently?"
          text={`This version of “${titleOf(chosen)}” is deleted. This cannot be undone. The present design is not affected.`}
          action="Delete permanently"
          onConfirm={() => void remove(chosen)}
          onClose={() => setQuestion(null)}
        />
      )}
    </div>
  );
}
