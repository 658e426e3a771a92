import { placeIn, placeInShow } from "../panels/parts/places";
import { commitDrafts, type Draft, drafts } from "../ui/drafts";
import { type Notice, withNotice, withoutNotice } from "../workbench/session/notice";
import { session } from "../workbench/session/session";

/** The notice that lists drafts that could not be committed. */
export const UNREAD_NOTICE = "unread-drafts";

const LONGEST_QUOTE = 40;

function quoted(text: string): string {
  return `“${text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text}”`;
}

function detail({ label, text, kept, error }: Draft): string {
  return `${label} stays at ${kept}, not ${quoted(text)}. ${error?.sentence ?? ""}`.trim();
}

function unreadNotice(unread: readonly Draft[]): Notice {
  return {
    id: UNREAD_NOTICE,
    severity: "warning",
    sentence: `The text in ${unread.length === 1 ? "a field" : "these fields"} is not valid, so the last valid ${unread.length === 1 ? "value is" : "values are"} used instead. The text is still in the field: correct it there.`,
    details: unread.map(detail),
    waysOut: ["dismiss"],
  };
}

/** Whether a field belongs to the document that is about to be used. */
function belongsTo(place: string, designId: string | undefined): boolean {
  const ids = designId === undefined ? session.store.getState().history.present.order : [designId];
  if (ids.some((id) => place.startsWith(placeIn(id, "")))) return true;
  const kept = place.startsWith(placeInShow("")) && !place.startsWith(placeInShow("pattern."));
  return designId === undefined && kept;
}

let stopWatching: () => void = () => undefined;

/** Removes the notice when the last of its drafts is corrected or dropped. */
function removeNoticeWhenCorrected(places: readonly string[]): void {
  stopWatching = drafts.subscribe((all) => {
    if (places.some((place) => place in all)) return;
    stopWatching();
    session.store.setState(({ notices }) => ({ notices: withoutNotice(notices, UNREAD_NOTICE) }));
  });
}

/**
 * Commits all drafts before the design is exported or printed; a notice lists those that are not valid.
 * @param designId the design that is used; the whole show if not given
 */
export function settleDrafts(designId?: string): void {
  commitDrafts();
  stopWatching();
  const unread = Object.entries(drafts.getState()).filter(([place]) => belongsTo(place, designId));
  session.store.setState(({ notices }) => ({
    notices:
      unread.length > 0
        ? withNotice(notices, unreadNotice(unread.map(([, draft]) => draft)))
        : withoutNotice(notices, UNREAD_NOTICE),
  }));
  if (unread.length > 0) removeNoticeWhenCorrected(unread.map(([place]) => place));
}
