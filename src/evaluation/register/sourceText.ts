/** Sources as text, for the help slips and the theory page. */
import { GROUNDS, WORKS, type Work } from "../../calc/sources";
import type { Source } from "./source";

/** A work written out: authors, title, year, first page. */
export function workText({ authors, title, year, page }: Work): string {
  return [authors, title, year, page].filter((part) => part !== undefined).join(", ");
}

function originOf(source: Source): string {
  if ("ground" in source) return GROUNDS[source.ground];
  const work = WORKS[source.work];
  return `${workText(work)}${source.place && `, ${source.place}`} (${work.known})`;
}

/** All sources of a result or a model in one sentence, without its full stop. */
export function sourceText(sources: readonly Source[]): string {
  const text = sources.map((source) => `${source.what && `${source.what}: `}${originOf(source)}`).join("; ");
  return text.charAt(0).toUpperCase() + text.slice(1);
}
