/** Makes versions: at the first edit of a session, periodically during editing, and before anything is removed. */
import type { StoreApi } from "zustand/vanilla";
import type { Design } from "../../design/design";
import { exampleShow } from "../../design/examples";
import type { Show } from "../../design/show";
import { sameValue } from "../session/history";
import type { WorkbenchState } from "../session/workbenchState";
import { committedShow } from "./committedShow";
import { beforeStep, CAUSES, type Shelving, shelvedDesign, shelvedShow } from "./shelvedTexts";
import type { NewVersion, Seat } from "./version";

const MINUTE = 60_000;
/** ms of editing between versions */
const INTERVAL = 10 * MINUTE;
/** edits after which the shorter interval applies */
const MANY_EDITS = 50;
const SHORTER_INTERVAL = 2 * MINUTE;
/** ms between versions of a show in which only designs change; these have their own versions */
const SHOW_INTERVAL = 60 * MINUTE;

export interface VersionMaking {
  /** Saves the show that a step is about to replace, and in the bin each design that is not in the next one. */
  showReplaced(label: string, next: Show): void;
  /** Saves in the bin each design that is not unchanged in the next show. */
  designsReplaced(label: string, next: Show): void;
  close(): void;
}

export interface VersionMakingNeeds {
  store: StoreApi<WorkbenchState>;
  keep(versions: readonly NewVersion[]): void;
  now: () => Date;
  newId: () => string;
}

/** The label of the step from one state to the other; null if none was added, as by undo. */
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

/** The former place of a design that a step has removed. */
function seatOf(before: Show, after: Show, id: string): Seat {
  const side = before.left === id ? "left" : before.right === id ? "right" : null;
  const taker = side === "left" ? after.left : null;
  return {
    index: before.order.indexOf(id),
    side,
    taker,
    fromRight: taker !== null && taker === before.right,
  };
}

/** Whether anything differs apart from the designs and which of them is open. */
function partsDiffer({ designs: _a, open: _b, ...before }: Show, { designs: _c, open: _d, ...after }: Show) {
  return !sameValue(before, after);
}

/** What already has versions, and since when. */
interface Marks {
  /** ids of the designs that have had a version since the session began */
  seen: ReadonlySet<string>;
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

/** Subscribes to a session and makes its versions. */
export function connectVersionMaking({ store, keep, now, newId }: VersionMakingNeeds): VersionMaking {
  let marks: Marks | null = null;
  /** the show after an announced step, whose replaced designs are in the bin already */
  let announced: Show | null = null;
  const shelving = (rest: Omit<Shelving, "id" | "at">): Shelving => ({
    id: newId(),
    at: now().toISOString(),
    ...rest,
  });
  const bin = (show: Show, ids: readonly string[], cause: string, next: Show) =>
    keep(
      ids.map((id) => {
        const seat = Object.hasOwn(next.designs, id) ? undefined : seatOf(show, next, id);
        return shelvedDesign(id, show.designs[id], shelving({ cause, binned: true, seat }));
      }),
    );
  const periodic = (show: Show, ids: readonly string[], withShow: boolean, cause: string) =>
    keep([
      ...ids.map((id) => shelvedDesign(id, show.designs[id], shelving({ cause, periodic: true }))),
      ...(withShow ? [shelvedShow(show, shelving({ cause, periodic: true }))] : []),
    ]);
  const begin = (before: Show) => {
    const at = now().getTime();
    marks = { seen: new Set(), show: before, showAt: at, designs: before.designs, at, edits: 0 };
    if (!sameValue(before, exampleShow())) periodic(before, [], true, CAUSES.start);
  };
  /** Saves a version of each design before its first edit, also of designs added during the session. */
  const keepFirst = (before: Show, after: Show, known: Marks) => {
    const first = before.order.filter((id) => {
      const changed = Object.hasOwn(after.designs, id) && after.designs[id] !== before.designs[id];
      return changed && !known.seen.has(id);
    });
    if (first.length === 0) return;
    known.seen = new Set([...known.seen, ...first]);
    periodic(before, first, false, CAUSES.start);
  };
  const goOn = (show: Show, known: Marks) => {
    known.edits += 1;
    const at = now().getTime();
    if (!isDue(known, at)) return;
    const withShow = partsDiffer(known.show, show) || at - known.showAt >= SHOW_INTERVAL;
    periodic(show, changedSince(known, show), withShow, CAUSES.editing);
    const shown = withShow ? { show, showAt: at } : { show: known.show, showAt: known.showAt };
    marks = { ...known, ...shown, designs: show.designs, at, edits: 0 };
  };
  const endFollowing = store.subscribe((state, earlier) => {
    const [before, after] = [committedShow(earlier), committedShow(state)];
    if (before === after || state.history.past === earlier.history.past) return;
    if (!marks) begin(before);
    if (marks) {
      if (after !== announced) keepFirst(before, after, marks);
      goOn(after, marks);
    }
    if (after !== announced && newStep(state, earlier) !== null)
      bin(before, gone(before, after), CAUSES.deleted, after);
  });
  const designsReplaced: VersionMaking["designsReplaced"] = (label, next) => {
    const before = committedShow(store.getState());
    announced = next;
    bin(before, replaced(before, next), beforeStep(label), next);
  };
  return {
    showReplaced(label, next) {
      const before = committedShow(store.getState());
      if (sameValue(before, next)) return;
      keep([shelvedShow(before, shelving({ cause: beforeStep(label) }))]);
      designsReplaced(label, next);
    },
    designsReplaced,
    close: endFollowing,
  };
}
