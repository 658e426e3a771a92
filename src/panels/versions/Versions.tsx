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
import { Question } from "./Question";
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
      "No earlier version of the open design yet. One is kept when editing begins, every ten minutes while it goes on, and before it is replaced.",
  },
  {
    name: "other designs",
    label: "Others",
    empty: "No earlier versions of other designs yet: they come as those are edited.",
  },
  {
    name: "show",
    label: "Show",
    empty:
      "No earlier version of the show yet. One is kept before another show, or the example, takes its place, and from time to time while it is edited.",
  },
  {
    name: "bin",
    label: "Bin",
    empty: "The bin is empty. Designs that are deleted or replaced come here, and stay until it is emptied.",
  },
];

/** Earlier versions of the designs and of the show, and the bin: looked at, compared, brought back. */
export function Versions() {
  const { versions, trouble, seenAt } = useVersions();
  const show = useShow((whole) => whole);
  const readOnly = useSession((session) => session.readOnly);
  const read = useMemo(() => newVersionReader(workbench.versions.read), []);
  const [group, setGroup] = useState<GroupName>(() =>
    window.location.hash === BIN_ADDRESS ? "bin" : "this design",
  );
  const [chosenId, setChosenId] = useState<string | null>(null);
  const [question, setQuestion] = useState<"delete" | "empty" | null>(null);
  const [told, setTold] = useState("");
  /** the show that restoring made, while that is the last that was done */
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

  // where there is room for one of the two alone, the focus goes with what is in sight
  useEffect(() => {
    const list = root.current?.querySelector<HTMLElement>("[data-versions]");
    if (chosenId !== null && list && getComputedStyle(list).display === "none")
      document.getElementById(VERSION_NAME)?.focus();
  }, [chosenId]);

  const isUndone = restored !== null && restored !== show;
  useEffect(() => {
    if (!isUndone) return;
    setTold("");
    setRestored(null);
  }, [isUndone]);

  const choose = (id: string | null) => {
    setTold("");
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
  const tell = (outcome: VersionOutcome, done: string) =>
    setTold(
      outcome.ok ? done : [outcome.sentence, ...outcome.faults.map(({ message }) => message)].join(" "),
    );
  const restore = async (version: VersionSummary) => {
    const outcome = await workbench.versions.restore(version.id);
    tell(outcome, `“${titleOf(version)}” is on the bench again.`);
    setRestored(outcome.ok ? session.store.getState().history.present : null);
  };
  const remove = async ({ id }: VersionSummary) => {
    const outcome = await workbench.versions.remove(id);
    if (outcome.ok) setChosenId(null);
    tell(outcome, "The version is deleted.");
  };
  const emptyBin = async () => tell(await workbench.versions.emptyBin(), "The bin is empty.");
  const exportFile = async ({ id }: VersionSummary) => {
    const file = await workbench.versions.file(id).catch((error: unknown) => String(error));
    if (file === null) setTold("This version is no longer kept.");
    else if (typeof file === "string") setTold(file);
    else saveFile(file.fileName, file.text, "application/json");
  };

  const tabs = GROUPS.map(
    ({ name, label, empty }): Tab => ({
      id: name,
      label: `${label} (${groups[name].length})`,
      content: (
        <>
          {name === "bin" && groups.bin.length > 0 && (
            <p className={styles.ways}>
              <Button icon="remove" onClick={() => setQuestion("empty")}>
                Empty the bin
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
      <div role="status" className={styles.told}>
        {told && !isUndone && (
          <p>
            {told}
            {restored && (
              <Button icon="undo" onClick={workbench.undo}>
                Undo
              </Button>
            )}
          </p>
        )}
      </div>
      {trouble && <p role="alert">{trouble}</p>}
      <div className={styles.columns}>
        <div className={styles.lists} data-versions>
          {versions === null ? (
            <p className={styles.empty}>Looking for versions …</p>
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
        <section className={styles.detail} aria-label="Chosen version">
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
            <p className={styles.empty}>Choose a version to see what it would bring back.</p>
          )}
        </section>
      </div>
      {question === "empty" && (
        <Question
          title="Empty the bin?"
          words={`${groups.bin.length === 1 ? "One design is" : `${groups.bin.length} designs are`} deleted for good. Undo does not bring that back.`}
          doing="Empty the bin"
          onDo={() => void emptyBin()}
          onClose={() => setQuestion(null)}
        />
      )}
      {question === "delete" && chosen && (
        <Question
          title="Delete this version for good?"
          words={`“${titleOf(chosen)}” as it was then is gone after that, and undo does not bring it back. What is on the bench stays as it is.`}
          doing="Delete for good"
          onDo={() => void remove(chosen)}
          onClose={() => setQuestion(null)}
        />
      )}
    </div>
  );
}
