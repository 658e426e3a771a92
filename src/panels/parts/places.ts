/** Places of fields: the keys of their drafts. */

/** The place of a field of one design. */
export function placeIn(designId: string, path: string): string {
  return `design/${designId}/${path}`;
}

/** The place of a field that belongs to the show as a whole. */
export function placeInShow(path: string): string {
  return `show/${path}`;
}
