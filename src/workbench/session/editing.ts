/** Edits of the show as undo steps: gestures, single edits, undo and redo. */
import type { StoreApi } from "zustand/vanilla";
import { withValueAt } from "../../design/changeAt";
import { type Design, parseDesign } from "../../design/design";
import type { Fault } from "../../design/document";
import { parseShow, type Show } from "../../design/show";
import { fieldAt } from "../../fields/allFields";
import {
  extendStep,
  type History,
  recordStep,
  replacePresent,
  sameValue,
  stepBack,
  stepForward,
} from "./history";
import { withNotice, withoutNotice } from "./notice";
import { openDesignOf, withOpenDesign, withOpened } from "./showEdits";
import type { WorkbenchState } from "./workbenchState";

export interface Editing {
  /** Begins a gesture: all changes until `commit` are one step. A running gesture is committed first. */
  begin(label: string): void;
  /** Changes the open design within the gesture; does nothing if none is running, as after Esc. */
  change(recipe: (design: Design) => Design): void;
  /** Ends the gesture as one step, or as part of the previous step of the same run; without a change it adds none. */
  commit(run?: string): void;
  /** Ends the gesture and restores the state before it. */
  cancel(): void;
  /**
   * Changes the open design in one step.
   * @param run identifies small steps of one kind, such as those of a field: steps that follow one another
   * within `RUN_PAUSE` are undone together
   */
  edit(label: string, recipe: (design: Design) => Design, run?: string): void;
  /** Sets a value of the open design in one step, named by its field unless a label is given. */
  setValue(path: string, value: unknown, label?: string, run?: string): void;
  /** Changes the show in one step. */
  editShow(label: string, recipe: (show: Show) => Show, run?: string): void;
  undo(): void;
  redo(): void;
  /** Opens another design; this is not an undo step. */
  openDesign(id: string): void;
}

/** ms between two steps of a run */
export const RUN_PAUSE = 1000;

const REFUSED = "refused";

function labelOf(path: string): string {
  return fieldAt(path)?.label ?? path;
}

/** The run of small steps that the last edit belongs to. */
interface Run {
  name: string;
  /** ms */
  at: number;
  /** the history after it; any other change leads to another past or present */
  past: History<Show>["past"];
  present: Show;
}

/** Whether a step at a time, ms, continues the run of the last one. */
function continuesRun(
  last: Run | null,
  run: string | undefined,
  at: number,
  history: History<Show>,
): boolean {
  if (last === null || last.name !== run || at - last.at >= RUN_PAUSE) return false;
  return last.past === history.past && last.present === history.present;
}

/** Creates the edits of a store. Values that the schema refuses never enter the show. */
export function newEditing(store: StoreApi<WorkbenchState>, now: () => Date): Editing {
  let lastRun: Run | null = null;
  const state = () => store.getState();
  const present = () => state().history.present;
  const refuse = (faults: readonly Fault[]) => {
    const details = faults.map((fault) => fault.message);
    const sentence = "This change was not made, because the design would not be valid: enter another value.";
    store.setState(({ notices }) => ({
      notices: withNotice(notices, {
        id: REFUSED,
        severity: "error",
        sentence,
        details,
        waysOut: ["dismiss"],
      }),
    }));
  };
  const setHistory = (history: History<Show>) => {
    const notices = withoutNotice(state().notices, REFUSED);
    if (history !== state().history) store.setState({ history, gesture: null, notices });
  };
  /** Extends the last step if it belongs to the same run; otherwise adds a step. */
  const record = (history: History<Show>, label: string, next: Show, run: string | undefined) => {
    const at = now().getTime();
    const last = continuesRun(lastRun, run, at, history) ? history.past.at(-1) : undefined;
    const before = last ? last.state : history.present;
    const after = last ? extendStep(history, next) : recordStep(history, label, before, next);
    // a run that returns to its initial state leaves no step to extend
    const recorded = after.present !== before;
    lastRun =
      run !== undefined && recorded ? { name: run, at, past: after.past, present: after.present } : null;
    setHistory(after);
  };
  const commit = (run?: string) => {
    const { gesture, history } = state();
    if (gesture) record(replacePresent(history, gesture.before), gesture.label, history.present, run);
  };
  const cancel = () => {
    const { gesture, history } = state();
    if (gesture) setHistory(replacePresent(history, gesture.before));
  };
  const locked = () => state().readOnly !== null;
  const step = (label: string, next: Show, run?: string) => {
    const { history } = state();
    if (!sameValue(history.present, next)) record(history, label, next, run);
  };
  const edit: Editing["edit"] = (label, recipe, run) => {
    if (locked()) return;
    commit();
    const next = withOpenDesign(present(), recipe);
    const parsed = parseDesign(openDesignOf(next));
    if (parsed.ok) step(label, next, run);
    else refuse(parsed.faults);
  };

  return {
    begin(label) {
      if (locked()) return;
      commit();
      store.setState({ gesture: { label, before: present() } });
    },
    change(recipe) {
      const { gesture, history } = state();
      if (!gesture) return;
      const next = withOpenDesign(present(), recipe);
      if (next === present() || !parseDesign(openDesignOf(next)).ok) return;
      store.setState({ history: replacePresent(history, next) });
    },
    commit,
    cancel,
    edit,
    setValue: (path, value, label = labelOf(path), run) =>
      edit(label, (design) => withValueAt(design, path, value), run),
    editShow(label, recipe, run) {
      if (locked()) return;
      commit();
      const next = recipe(present());
      const parsed = parseShow(next);
      if (parsed.ok) step(label, next, run);
      else refuse(parsed.faults);
    },
    undo() {
      if (state().gesture) cancel();
      else if (!locked()) setHistory(stepBack(state().history));
    },
    redo() {
      if (!state().gesture && !locked()) setHistory(stepForward(state().history));
    },
    openDesign(id) {
      commit();
      const next = withOpened(present(), id);
      if (next !== present()) setHistory(replacePresent(state().history, next));
    },
  };
}
