/** One sentence about a design that needs attention, as data; it is written out at the edge. */
export interface Finding {
  severity: "error" | "warning" | "note";
  /** kebab-case, never renamed */
  code: string;
  /**
   * with {field}, {value} and {limit} filled in at the edge in the reader's units, and {ends} by “begins” where the
   * value lies below the limit
   */
  sentence: string;
  /** dotted path of the field to change */
  where: string;
  /** id of the result or path of the field that is judged */
  quantity: string;
  /** SI; null where there is nothing to measure */
  value: number | null;
  limit: number | null;
  /** what to change, one clause without a full stop */
  remedy: string;
}
