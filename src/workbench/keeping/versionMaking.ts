/** When versions are made: at the first edit of a session, every so often while editing, before anything goes. */
import type { StoreApi } from "zustand/vanilla";
import type { Design } from "../../design/design";
import { exampleShow } from "../../design/examples";
import type { Show } from "../../design/show";
import { sameValue } from "../history";
import type { WorkbenchState } from "../workbenchState";
import { committedShow } from "./committedShow";
import { beforeStep, CAUSES, type Shelving, shelvedDesign, shelvedShow } from "./shelvedTexts";
import type { NewVersion } from "./version";

const MINUTE = 60_000;
/** ms of editing between versions */
const INTERVAL = 10 * MINUTE;
/** edits after which a version comes sooner, but not sooner than the shorter interval */
const MANY_EDITS = 50;
const SHORTER_INTERVAL = 2 * MINUTE;
/** ms between versions of a show of which only designs change; those have versions of their own */
const SHOW_INTERVAL = 60 * MINUTE;

export interface VersionMaking {
  /** Keeps the show, and in the bin each design of it that is not in the next one: a step is about to replace it. */
  showReplaced(label: string, next: Show): void;
  /** Keeps in the bin each design that is not in the next show as it is. */
  designsReplaced(label: string, next: Show): void;
  close(): void;
}

export interface VersionMakingNeeds {
  store: StoreApi<WorkbenchState>;
  keep(versions: readonly NewVersion[]): void;
  now: () => Date;
  newId: () => string;
}

/** The label of the step that led from one state to the other; null where none was added, as by undo. */
function newStep(state: WorkbenchState, before: WorkbenchState): string | null {
  const step = state.history.past.at(-1);
  return step && step !== before.history.past.at(-1) && state.history.future.length === 0 ? step.label : null;
}

function gone(before: Show, after: Show): string[] {
  return before.order.filter((id) => !Object.hasOwn(after.designs, id));
}

function replaced(before: Show, after: Show): string[] {
  return before.order.filter((id) => !sameValue(before.designs[id], after.designs[id]));
}

/** Whether anything but designs, and which of them is open, differs. */
function partsDiffer({ designs: _a, open: _b, ...before }: Show, { designs: _c, open: _d, ...after }: Show) {
  return !sameValue(before, after);
}

/** What has versions, and since when. */
interface Marks {
  show: Show;
  showAt: number;
  designs: Readonly<Record<string, Design>>;
  at: number;
  edits: number;
}

function isDue({ at, edits }: Marks, now: number): boolean {
  const age = now - at;
  return !(age >= 0 && age < (edits >= MANY_EDITS ? SHORTER_INTERVAL : INTERVAL));
}

function changedSince(marks: Marks, show: Show): string[] {
  return show.order.filter((id) => show.designs[id] !== marks.designs[id]);
}

/** Follows a session and makes its versions. */
export function connectVersionMaking({ store, keep, now, newId }: VersionMakingNeeds): VersionMaking {
  let marks: Marks | null = null;
  /** what a step that was told of beforehand leads to: its designs are in the bin already */
  let announced: Show | null = null;
  const shelving = (rest: Omit<Shelving, "id" | "at">): Shelving => ({
    id: newId(),
    at: now().toISOString(),
    ...rest,
  });
  const bin = (show: Show, ids: readonly string[], cause: string) =>
    keep(ids.map((id) => shelvedDesign(id, show.designs[id], shelving({ cause, binned: true }))));
  const periodic = (show: Show, ids: readonly string[], withShow: boolean, cause: string) =>
    keep([
      ...ids.map((id) => shelvedDesign(id, show.designs[id], shelving({ cause, periodic: true }))),
      ...(withShow ? [shelvedShow(show, shelving({ cause, periodic: true }))] : []),
    ]);
  const begin = (before: Show, after: Show) => {
    const at = now().getTime();
    marks = { show: before, showAt: at, designs: before.designs, at, edits: 1 };
    // what the edit adds has no version from before it
    const changed = changedSince(marks, after).filter((id) => Object.hasOwn(before.designs, id));
    if (!sameValue(before, exampleShow())) periodic(before, changed, true, CAUSES.start);
  };
  const goOn = (show: Show, known: Marks) => {
    known.edits += 1;
    const at = now().getTime();
    if (!isDue(known, at)) return;
    const withShow = partsDiffer(known.show, show) || at - known.showAt >= SHOW_INTERVAL;
    periodic(show, changedSince(known, show), withShow, CAUSES.editing);
    const shown = withShow ? { show, showAt: at } : { show: known.show, showAt: known.showAt };
    marks = { ...shown, designs: show.designs, at, edits: 0 };
  };
  const endFollowing = store.subscribe((state, earlier) => {
    const [before, after] = [committedShow(earlier), committedShow(state)];
    if (before === after || state.history.past === earlier.history.past) return;
    if (marks) goOn(after, marks);
    else begin(before, after);
    if (after !== announced && newStep(state, earlier) !== null)
      bin(before, gone(before, after), CAUSES.deleted);
  });
  const designsReplaced: VersionMaking["designsReplaced"] = (label, next) => {
    const before = committedShow(store.getState());
    announced = next;
    bin(before, replaced(before, next), beforeStep(label));
  };
  return {
    showReplaced(label, next) {
      const before = committedShow(store.getState());
      if (sameValue(before, next) || sameValue(before, exampleShow())) return;
      keep([shelvedShow(before, shelving({ cause: beforeStep(label) }))]);
      designsReplaced(label, next);
    },
    designsReplaced,
    close: endFollowing,
  };
}
