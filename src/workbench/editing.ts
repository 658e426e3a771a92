/** Edits of the show as undo steps: gestures, single edits, back and forth. */
import type { StoreApi } from "zustand/vanilla";
import { withValueAt } from "../design/changeAt";
import { type Design, parseDesign } from "../design/design";
import type { Fault } from "../design/document";
import { fieldAt } from "../design/fields";
import { parseShow, type Show } from "../design/show";
import { type History, recordStep, replacePresent, sameValue, stepBack, stepForward } from "./history";
import { withNotice, withoutNotice } from "./notice";
import { openDesignOf, withOpenDesign, withOpened } from "./showEdits";
import type { WorkbenchState } from "./workbenchState";

export interface Editing {
  /** Begins a gesture: what changes until `commit` is one step. A gesture that runs is committed first. */
  begin(label: string): void;
  /** Changes the open design within the gesture; nothing where none runs, as after Esc. */
  change(recipe: (design: Design) => Design): void;
  /** Ends the gesture as one step; none where it changed nothing. */
  commit(): void;
  /** Ends the gesture and restores what was before it. */
  cancel(): void;
  /** Changes the open design in one step. */
  edit(label: string, recipe: (design: Design) => Design): void;
  /** Puts a value at a path of the open design, in one step, named by its field unless a label is given. */
  setValue(path: string, value: unknown, label?: string): void;
  /** Changes the show in one step. */
  editShow(label: string, recipe: (show: Show) => Show): void;
  undo(): void;
  redo(): void;
  /** Puts another design on the board; looking at it is no step. */
  openDesign(id: string): void;
}

const REFUSED = "refused";

function labelOf(path: string): string {
  return fieldAt(path)?.label ?? path;
}

/** Makes the edits of a store. Nothing gets into the show that its schema refuses. */
export function newEditing(store: StoreApi<WorkbenchState>): Editing {
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
  const commit = () => {
    const { gesture, history } = state();
    if (gesture) setHistory(recordStep(history, gesture.label, gesture.before, history.present));
  };
  const cancel = () => {
    const { gesture, history } = state();
    if (gesture) setHistory(replacePresent(history, gesture.before));
  };
  const locked = () => state().readOnly !== null;
  const step = (label: string, next: Show) => {
    const { history } = state();
    if (!sameValue(history.present, next)) setHistory(recordStep(history, label, history.present, next));
  };
  const edit: Editing["edit"] = (label, recipe) => {
    if (locked()) return;
    commit();
    const next = withOpenDesign(present(), recipe);
    const parsed = parseDesign(openDesignOf(next));
    if (parsed.ok) step(label, next);
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
    setValue: (path, value, label = labelOf(path)) =>
      edit(label, (design) => withValueAt(design, path, value)),
    editShow(label, recipe) {
      if (locked()) return;
      commit();
      const next = recipe(present());
      const parsed = parseShow(next);
      if (parsed.ok) step(label, next);
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
