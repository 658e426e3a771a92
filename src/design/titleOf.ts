/** A design's title for display: a file may have none. */
export function titleOf({ title }: { title: string }): string {
  // a title of white space and invisible characters counts as none
  return /[^\p{White_Space}\p{C}]/u.test(title) ? title : "Untitled";
}
