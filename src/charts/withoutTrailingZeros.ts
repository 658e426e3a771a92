/** Removes trailing zeros after the decimal point: axis labels are round numbers, and space is short. */
export function withoutTrailingZeros(text: string): string {
  return text.replace(/(\.\d*?)0+(?!\d)/, "$1").replace(/\.(?!\d)/, "");
}
