/** One published or computed value beside what this project computes for it. */
export interface ReferenceRow {
  /** of the check that it comes from */
  id: string;
  /** heading that it belongs under */
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
