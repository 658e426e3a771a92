/** Without zeros after the point: axis labels are round, and narrow places many. */
export function plain(text: string): string {
  return text.replace(/(\.\d*?)0+(?!\d)/, "$1").replace(/\.(?!\d)/, "");
}
