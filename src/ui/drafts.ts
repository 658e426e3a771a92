/**
 * Text typed into fields and not committed yet, by the field's place. It is kept outside the fields, so
 * that it survives a closed tab, a rotated phone and a switch to another design.
 */
import { useEffect, useRef } from "react";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";

/** Why a draft cannot be committed; it stays in the field until it is corrected. */
export interface DraftError {
  sentence: string;
  /** readings to choose from, where the text is ambiguous */
  choices: readonly string[];
}

export interface Draft {
  label: string;
  text: string;
  /** the value when typing began: once the field has another one, the draft is outdated */
  over: unknown;
  /** that value as shown to the user */
  kept: string;
  /** null until a commit was tried */
  error: DraftError | null;
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

/** The place of the draft in an element; null if it has no draft. */
export function draftPlace(element: EventTarget | null): string | null {
  return element instanceof HTMLElement ? (element.dataset.draft ?? null) : null;
}

const committers = new Set<() => void>();

/** Commits every draft on the page that can be read, as if its field had lost focus. */
export function commitDrafts(): void {
  for (const commit of committers) commit();
}

/**
 * The draft of a field; null if there is none, or if the field's value has changed since it was typed.
 * @param place identifies the field among all fields of all designs
 * @param commit tries to commit the text
 */
export function useDraft(place: string, value: unknown, commit: (text: string) => void): Draft | null {
  const kept = useStore(drafts, (all) => all[place]);
  const outdated = kept !== undefined && !Object.is(kept.over, value);
  useEffect(() => {
    if (outdated) dropDraft(place);
  }, [outdated, place]);
  const latest = useRef(commit);
  latest.current = commit;
  useEffect(() => {
    const committer = () => {
      const draft = drafts.getState()[place];
      if (draft) latest.current(draft.text);
    };
    committers.add(committer);
    return () => void committers.delete(committer);
  }, [place]);
  return kept && !outdated ? kept : null;
}
