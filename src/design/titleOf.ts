/** A design's title for a screen: a file may come without one. */
export function titleOf({ title }: { title: string }): string {
  // what is made of blanks and of signs that nobody sees has no title either
  return /[^\p{White_Space}\p{C}]/u.test(title) ? title : "Untitled";
}
