/** Undo and redo steps of any immutable state. */

interface Step<State> {
  /** name of the step, such as “move tap” */
  label: string;
  /** the state on the other side of the step */
  state: State;
}

export interface History<State> {
  past: readonly Step<State>[];
  present: State;
  future: readonly Step<State>[];
}

/** Maximum number of steps; the oldest are dropped. */
export const HISTORY_DEPTH = 200;

/** A history without steps. */
export function newHistory<State>(present: State): History<State> {
  return { past: [], present, future: [] };
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}

/** Whether the second object has every value of the first that JSON would write. */
function includesValues(one: Record<string, unknown>, other: Record<string, unknown>): boolean {
  return Object.keys(one).every((key) => one[key] === undefined || sameValue(one[key], other[key]));
}

/**
 * Whether two states have the same values, as JSON would write them. Identical objects are not compared
 * further: an edit keeps all designs of a show but one.
 */
export function sameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (!isObject(a) || !isObject(b)) return Number.isNaN(a) && Number.isNaN(b);
  return Array.isArray(a) === Array.isArray(b) && includesValues(a, b) && includesValues(b, a);
}

/** Records one step from `before` to `after`; none if their values are equal. */
export function recordStep<State>(
  history: History<State>,
  label: string,
  before: State,
  after: State,
): History<State> {
  if (sameValue(before, after)) return { ...history, present: before };
  const past = [...history.past, { label, state: before }].slice(-HISTORY_DEPTH);
  return { past, present: after, future: [] };
}

/** Makes the last step lead to another state; drops it if that is the state before it. */
export function extendStep<State>(history: History<State>, after: State): History<State> {
  const last = history.past.at(-1);
  if (!last) return history;
  return recordStep({ ...history, past: history.past.slice(0, -1) }, last.label, last.state, after);
}

/** Replaces the present without adding a step, as within a gesture. */
export function replacePresent<State>(history: History<State>, present: State): History<State> {
  return { ...history, present };
}

/** Undoes the last step; unchanged if there is none. */
export function stepBack<State>(history: History<State>): History<State> {
  const last = history.past.at(-1);
  if (!last) return history;
  return {
    past: history.past.slice(0, -1),
    present: last.state,
    future: [{ label: last.label, state: history.present }, ...history.future],
  };
}

/** Redoes the step that was undone last; unchanged if there is none. */
export function stepForward<State>(history: History<State>): History<State> {
  const [next, ...future] = history.future;
  if (!next) return history;
  return {
    past: [...history.past, { label: next.label, state: history.present }],
    present: next.state,
    future,
  };
}
