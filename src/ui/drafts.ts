/**
 * What was typed into fields and is not taken over yet, by the field's place. It is kept outside the
 * fields, so that it outlives a closed tab, a turned phone and another design on the board.
 */
import { useEffect, useRef } from "react";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";

/** Why what was typed is not taken over; it stays in the field until it is mended. */
export interface Trouble {
  sentence: string;
  /** readings to choose from, where it can be read in several ways */
  choices: readonly string[];
}

export interface Draft {
  label: string;
  text: string;
  /** the value it was typed over: another one outdates it */
  over: unknown;
  /** that value as the reader sees it */
  kept: string;
  /** null until it was tried to take it over */
  trouble: Trouble | null;
}

type Drafts = Readonly<Record<string, Draft>>;

export const drafts = createStore<Drafts>(() => ({}));

export function putDraft(place: string, draft: Draft): void {
  drafts.setState({ [place]: draft });
}

export function dropDraft(place: string): void {
  if (!(place in drafts.getState())) return;
  const { [place]: _gone, ...others } = drafts.getState();
  drafts.setState(others, true);
}

export function dropAllDrafts(): void {
  drafts.setState({}, true);
}

/** The place of the draft that an element holds; null where it holds none. */
export function draftPlace(element: EventTarget | null): string | null {
  return element instanceof HTMLElement ? (element.dataset.draft ?? null) : null;
}

const takers = new Set<() => void>();

/** Takes over every draft in the page that can be read, as if its field had been left. */
export function takeDrafts(): void {
  for (const take of takers) take();
}

/**
 * The draft of a field; null where there is none, or where the value is no longer the one it was typed over.
 * @param place tells the field from every other one, of other designs too
 * @param take tries to take over what was typed
 */
export function useDraft(place: string, value: unknown, take: (text: string) => void): Draft | null {
  const kept = useStore(drafts, (all) => all[place]);
  const outdated = kept !== undefined && !Object.is(kept.over, value);
  useEffect(() => {
    if (outdated) dropDraft(place);
  }, [outdated, place]);
  const latest = useRef(take);
  latest.current = take;
  useEffect(() => {
    const taker = () => {
      const draft = drafts.getState()[place];
      if (draft) latest.current(draft.text);
    };
    takers.add(taker);
    return () => void takers.delete(taker);
  }, [place]);
  return kept && !outdated ? kept : null;
}
