/** Edits of the show as undo steps: gestures, single edits, back and forth. */
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
  /** Begins a gesture: what changes until `commit` is one step. A gesture that runs is committed first. */
  begin(label: string): void;
  /** Changes the open design within the gesture; nothing where none runs, as after Esc. */
  change(recipe: (design: Design) => Design): void;
  /** Ends the gesture as one step, or as part of the one before in the same run; none where it changed nothing. */
  commit(run?: string): void;
  /** Ends the gesture and restores what was before it. */
  cancel(): void;
  /**
   * Changes the open design in one step.
   * @param run what small steps of one kind have in common, as a field's place: one step of undo takes all
   * back that follow one another within `RUN_PAUSE`
   */
  edit(label: string, recipe: (design: Design) => Design, run?: string): void;
  /** Puts a value at a path of the open design, in one step, named by its field unless a label is given. */
  setValue(path: string, value: unknown, label?: string, run?: string): void;
  /** Changes the show in one step. */
  editShow(label: string, recipe: (show: Show) => Show, run?: string): void;
  undo(): void;
  redo(): void;
  /** Puts another design on the board; looking at it is no step. */
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
  /** what it left: whatever else happens leaves another past or present */
  past: History<Show>["past"];
  present: Show;
}

/** Whether a step at a time, ms, belongs to the run of the last one. */
function goesOn(last: Run | null, run: string | undefined, at: number, history: History<Show>): boolean {
  if (last === null || last.name !== run || at - last.at >= RUN_PAUSE) return false;
  return last.past === history.past && last.present === history.present;
}

/** Makes the edits of a store. Nothing gets into the show that its schema refuses. */
export function newEditing(store: StoreApi<WorkbenchState>, now: () => Date): Editing {
  let lastRun: Run | null = null;
  const state = () => store.getState();
  const present = () => state().history.present;
  const refuse = (faults: readonly Fault[]) => {
    const details = faults.map((fault) => fault.message);
    const sentence = "This change was not made, because the design would have no meaning.";
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
  /** The last step made longer where it belongs to the same run, else one more. */
  const record = (history: History<Show>, label: string, next: Show, run: string | undefined) => {
    const at = now().getTime();
    const last = goesOn(lastRun, run, at, history) ? history.past.at(-1) : undefined;
    const before = last ? last.state : history.present;
    const after = last ? extendStep(history, next) : recordStep(history, label, before, next);
    // steps that lead back to where they began leave none to go on from
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
