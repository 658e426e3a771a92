/**
 * Lines of comma-separated values.
 *
 * Source: rfc4180, for quotes; common practice, no source, for that spreadsheets run a text beginning with one of
 * = + - @, a tab or a return as a formula, and that an apostrophe before it stops them.
 */

const FORMULA = /^[=+\-@\t\r]/;
const NEEDS_QUOTES = /[",\r\n]/;

/** A text as a cell that a spreadsheet shows and never executes. */
export function textCell(text: string): string {
  const harmless = FORMULA.test(text) ? `'${text}` : text;
  return NEEDS_QUOTES.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
