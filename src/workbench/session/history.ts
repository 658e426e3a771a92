/** The steps that can be taken back and done again, over any immutable state. */

interface Step<State> {
  /** what was done, as in “move tap” */
  label: string;
  /** the state on the other side of the step */
  state: State;
}

export interface History<State> {
  past: readonly Step<State>[];
  present: State;
  future: readonly Step<State>[];
}

/** Steps that are remembered; the oldest fall away. */
export const HISTORY_DEPTH = 200;

/** A history that has only a present. */
export function newHistory<State>(present: State): History<State> {
  return { past: [], present, future: [] };
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}

/** Whether every value of the one that JSON would write is the other's too. */
function holds(one: Record<string, unknown>, other: Record<string, unknown>): boolean {
  return Object.keys(one).every((key) => one[key] === undefined || sameValue(one[key], other[key]));
}

/**
 * Whether two states hold the same values, as JSON would write them. Parts that are the same object are
 * not looked into: of a show of many designs an edit leaves all but one as they were.
 */
export function sameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (!isObject(a) || !isObject(b)) return Number.isNaN(a) && Number.isNaN(b);
  return Array.isArray(a) === Array.isArray(b) && holds(a, b) && holds(b, a);
}

/** Records one step from `before` to `after`; nothing where the two hold the same values. */
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

/** Lets the last step lead to another state; there is no step left where that is what was before it. */
export function extendStep<State>(history: History<State>, after: State): History<State> {
  const last = history.past.at(-1);
  if (!last) return history;
  return recordStep({ ...history, past: history.past.slice(0, -1) }, last.label, last.state, after);
}

/** Replaces the present without a step, as within a gesture. */
export function replacePresent<State>(history: History<State>, present: State): History<State> {
  return { ...history, present };
}

/** Takes the last step back; unchanged where there is none. */
export function stepBack<State>(history: History<State>): History<State> {
  const last = history.past.at(-1);
  if (!last) return history;
  return {
    past: history.past.slice(0, -1),
    present: last.state,
    future: [{ label: last.label, state: history.present }, ...history.future],
  };
}

/** Does the step again that was taken back last; unchanged where there is none. */
export function stepForward<State>(history: History<State>): History<State> {
  const [next, ...future] = history.future;
  if (!next) return history;
  return {
    past: [...history.past, { label: next.label, state: history.present }],
    present: next.state,
    future,
  };
}
