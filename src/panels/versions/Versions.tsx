import { useCallback, useEffect, useMemo, useRef, useState } from "react";
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
import { newVersionReader, type ReadVersion } from "./versionDocument";
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

/** The group that is open: the bin where the page's address asks for it. */
function useGroup() {
  const [group, setGroup] = useState<GroupName>(() =>
    window.location.hash === BIN_ADDRESS ? "bin" : "this design",
  );
  useEffect(() => {
    const follow = () => {
      if (window.location.hash === BIN_ADDRESS) setGroup("bin");
    };
    window.addEventListener("hashchange", follow);
    return () => window.removeEventListener("hashchange", follow);
  }, []);
  return [group, setGroup] as const;
}

/** What an action came to, and what it restored, until the show is changed again. */
function useOutcome(show: Show) {
  const [message, setMessage] = useState("");
  const [restored, setRestored] = useState<Show | null>(null);
  const clear = useCallback(() => {
    setMessage("");
    setRestored(null);
  }, []);
  const isUndone = restored !== null && restored !== show;
  useEffect(() => {
    if (isUndone) clear();
  }, [isUndone, clear]);
  const report = (outcome: VersionOutcome, done: string) =>
    setMessage(
      outcome.ok ? done : [outcome.sentence, ...outcome.faults.map(({ message: fault }) => fault)].join(" "),
    );
  return { message: isUndone ? "" : message, restored, clear, report, setMessage, setRestored };
}

type Outcome = ReturnType<typeof useOutcome>;

async function restore(version: VersionSummary, { report, setRestored }: Outcome): Promise<void> {
  const outcome = await workbench.versions.restore(version.id);
  report(outcome, `“${titleOf(version)}” is restored.`);
  setRestored(outcome.ok ? session.store.getState().history.present : null);
}

async function exportFile({ id }: VersionSummary, { setMessage }: Outcome): Promise<void> {
  const file = await workbench.versions.file(id).catch((error: unknown) => String(error));
  if (file === null) setMessage("This version no longer exists.");
  else if (typeof file === "string") setMessage(file);
  else saveFile(file.fileName, file.text, "application/json");
}

function OutcomeMessage({ message, restored }: Outcome) {
  return (
    <div role="status" className={styles.message}>
      {message && (
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
  );
}

interface ListsProps {
  versions: readonly VersionSummary[];
  open: string;
  group: GroupName;
  onGroup: (group: GroupName) => void;
  chosenId: string | null;
  read: ReadVersion;
  now: Date;
  onChoose: (id: string | null) => void;
  onEmptyBin: () => void;
}

/** The versions by group, each group on a tab of its own. */
function Lists(props: ListsProps) {
  const { versions, open, group, onGroup, chosenId, read, now, onChoose, onEmptyBin } = props;
  const groups = versionGroups(versions, open);
  const tabs = GROUPS.map(
    ({ name, label, empty }): Tab => ({
      id: name,
      label: `${label} (${groups[name].length})`,
      content: (
        <>
          {name === "bin" && groups.bin.length > 0 && (
            <p className={styles.actions}>
              <Button icon="remove" onClick={onEmptyBin}>
                Empty bin
              </Button>
            </p>
          )}
          <VersionList
            versions={groups[name]}
            chosen={chosenId}
            read={read}
            now={now}
            onChoose={onChoose}
            empty={empty}
          />
        </>
      ),
    }),
  );
  return (
    <Tabs
      name="Versions"
      tabs={tabs}
      chosen={group}
      onChoose={(id) => {
        onGroup(id as GroupName);
        onChoose(null);
      }}
    />
  );
}

interface QuestionsProps {
  question: "delete" | "empty" | null;
  binned: number;
  chosen: VersionSummary | null;
  onEmptyBin: () => void;
  onDelete: (version: VersionSummary) => void;
  onClose: () => void;
}

/** What cannot be undone is asked about first. */
function Questions({ question, binned, chosen, onEmptyBin, onDelete, onClose }: QuestionsProps) {
  if (question === "empty")
    return (
      <ConfirmDialog
        title="Empty the bin?"
        text={`${binned === 1 ? "One design is" : `${binned} designs are`} deleted permanently. This cannot be undone.`}
        action="Empty bin"
        onConfirm={onEmptyBin}
        onClose={onClose}
      />
    );
  if (question !== "delete" || !chosen) return null;
  return (
    <ConfirmDialog
      title="Delete this version permanently?"
      text={`This version of “${titleOf(chosen)}” is deleted. This cannot be undone. The present design is not affected.`}
      action="Delete permanently"
      onConfirm={() => onDelete(chosen)}
      onClose={onClose}
    />
  );
}

interface DetailProps {
  version: VersionSummary;
  read: ReadVersion;
  show: Show;
  now: Date;
  outcome: Outcome;
  onBack: () => void;
  onDelete: () => void;
}

function Detail({ version, read, show, now, outcome, onBack, onDelete }: DetailProps) {
  const readOnly = useSession((state) => state.readOnly);
  return (
    <>
      <p className={styles.back}>
        <Button icon="up" onClick={onBack}>
          All versions
        </Button>
      </p>
      <VersionDetail
        version={version}
        read={read}
        show={show}
        now={now}
        readOnly={readOnly}
        onRestore={() => void restore(version, outcome)}
        onExport={() => void exportFile(version, outcome)}
        onDelete={onDelete}
      />
    </>
  );
}

/** Which version is looked at; on a narrow screen it replaces the list, and the focus follows there and back. */
function useChosen(onChange: () => void) {
  const [chosenId, setChosenId] = useState<string | null>(null);
  const root = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const list = root.current?.querySelector<HTMLElement>("[data-versions]");
    if (chosenId !== null && list && getComputedStyle(list).display === "none")
      document.getElementById(VERSION_NAME)?.focus();
  }, [chosenId]);
  const choose = (id: string | null) => {
    onChange();
    setChosenId(id);
  };
  const backToList = () => {
    const row = chosenId;
    choose(null);
    requestAnimationFrame(() =>
      root.current?.querySelector<HTMLElement>(`[data-version="${CSS.escape(row ?? "")}"]`)?.focus(),
    );
  };
  return { root, chosenId, choose, backToList };
}

/** Earlier versions of the designs and of the show, and the bin: to view, compare and restore. */
export function Versions() {
  const { versions, error, seenAt } = useVersions();
  const show = useShow((whole) => whole);
  const read = useMemo(() => newVersionReader(workbench.versions.read), []);
  const [question, setQuestion] = useState<"delete" | "empty" | null>(null);
  const [group, setGroup] = useGroup();
  const outcome = useOutcome(show);
  const { root, chosenId, choose, backToList } = useChosen(outcome.clear);
  const chosen = versions?.find(({ id }) => id === chosenId) ?? null;
  const remove = async ({ id }: VersionSummary) => {
    const removal = await workbench.versions.remove(id);
    if (removal.ok) choose(null);
    outcome.report(removal, "The version is deleted.");
  };
  const emptyBin = async () => outcome.report(await workbench.versions.emptyBin(), "The bin is empty.");
  return (
    <div className={`${styles.versions} ${chosen ? styles.looking : ""}`} ref={root}>
      <h1 className={styles.name}>Versions and bin</h1>
      <OutcomeMessage {...outcome} />
      {error && <p role="alert">{error}</p>}
      <div className={styles.columns}>
        <div className={styles.lists} data-versions>
          {versions === null ? (
            <p className={styles.empty}>Loading versions …</p>
          ) : (
            <Lists
              versions={versions}
              open={show.open}
              group={group}
              onGroup={setGroup}
              chosenId={chosenId}
              read={read}
              now={seenAt}
              onChoose={choose}
              onEmptyBin={() => setQuestion("empty")}
            />
          )}
        </div>
        <section className={styles.detail} aria-label="Selected version">
          {chosen ? (
            <Detail
              version={chosen}
              read={read}
              show={show}
              now={seenAt}
              outcome={outcome}
              onBack={backToList}
              onDelete={() => setQuestion("delete")}
            />
          ) : (
            <p className={styles.empty}>Select a version to see what restoring it would change.</p>
          )}
        </section>
      </div>
      <Questions
        question={question}
        binned={versionGroups(versions ?? [], show.open).bin.length}
        chosen={chosen}
        onEmptyBin={() => void emptyBin()}
        onDelete={(version) => void remove(version)}
        onClose={() => setQuestion(null)}
      />
    </div>
  );
}
