function reason(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const cause = error.cause === undefined ? "" : `\nbecause of ${reason(error.cause)}`;
  return `${error.stack ?? `${error.name}: ${error.message}`}${cause}`;
}

/** What is worth passing on of a failure, as plain text. */
export function failureReport(sentence: string, error: unknown, account: string): string {
  return [sentence, reason(error), account].filter((part) => part !== "").join("\n\n");
}
