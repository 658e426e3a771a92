import { placeIn, placeInShow } from "../panels/parts/places";
import { commitDrafts, type Draft, drafts } from "../ui/drafts";
import { type Notice, withNotice, withoutNotice } from "../workbench/session/notice";
import { session } from "../workbench/session/session";

/** The notice that names what was typed and could not be used. */
export const UNREAD_NOTICE = "unread-drafts";

const LONGEST_QUOTE = 40;

function quoted(text: string): string {
  return `“${text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text}”`;
}

function detail({ label, text, kept, error }: Draft): string {
  return `${label} stays ${kept}, not ${quoted(text)}. ${error?.sentence ?? ""}`.trim();
}

function unreadNotice(unread: readonly Draft[]): Notice {
  return {
    id: UNREAD_NOTICE,
    severity: "warning",
    sentence: `What was typed into ${unread.length === 1 ? "a field" : "these fields"} cannot be used yet: the last good value stands instead. The text is still in the field, to be mended.`,
    details: unread.map(detail),
    waysOut: ["dismiss"],
  };
}

/** Whether what stands in a field would be part of what is made. */
function concerns(place: string, designId: string | undefined): boolean {
  const ids = designId === undefined ? session.store.getState().history.present.order : [designId];
  if (ids.some((id) => place.startsWith(placeIn(id, "")))) return true;
  const kept = place.startsWith(placeInShow("")) && !place.startsWith(placeInShow("pattern."));
  return designId === undefined && kept;
}

let endFollowing: () => void = () => undefined;

/** The notice goes when the last of its texts is mended or taken back. */
function followUntilMended(places: readonly string[]): void {
  endFollowing = drafts.subscribe((all) => {
    if (places.some((place) => place in all)) return;
    endFollowing();
    session.store.setState(({ notices }) => ({ notices: withoutNotice(notices, UNREAD_NOTICE) }));
  });
}

/**
 * Takes over what was typed, before something is made from the design; what cannot be used is named in a notice.
 * @param designId the design that it is made from; the whole show where none is given
 */
export function settleDrafts(designId?: string): void {
  commitDrafts();
  endFollowing();
  const unread = Object.entries(drafts.getState()).filter(([place]) => concerns(place, designId));
  session.store.setState(({ notices }) => ({
    notices:
      unread.length > 0
        ? withNotice(notices, unreadNotice(unread.map(([, draft]) => draft)))
        : withoutNotice(notices, UNREAD_NOTICE),
  }));
  if (unread.length > 0) followUntilMended(unread.map(([place]) => place));
}
