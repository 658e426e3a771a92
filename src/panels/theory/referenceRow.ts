/** One published or computed reference value and the value that this project computes. */
export interface ReferenceRow {
  /** id of its check */
  id: string;
  /** heading of its group */
  group: string;
  name: string;
  source: string;
  reference: number;
  computed: number;
  /** computed over reference less one; with `absolute` the difference in the row's unit */
  deviation: number;
  tolerance: number;
  absolute: boolean;
  /** SI, empty for a ratio */
  unit: string;
}
