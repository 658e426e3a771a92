/** One thing in a design that needs attention, as data; `findingMessage` makes the sentence. */
export interface Finding {
  severity: "error" | "warning" | "note";
  /** kebab-case, never renamed */
  code: string;
  /**
   * {field}, {value} and {limit} are filled in later in the user's units, and {ends} by “begins” if the value is
   * below the limit
   */
  sentence: string;
  /** dotted path of the field to change */
  where: string;
  /** id of the result or path of the field that is judged */
  quantity: string;
  /** SI; null if there is no value */
  value: number | null;
  limit: number | null;
  /** what to change, one clause without a full stop */
  remedy: string;
}
