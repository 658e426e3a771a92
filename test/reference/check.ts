/** One value that this project did not make, and how this project computes it; the theory page lists the same. */
export interface ReferenceCheck {
  id: string;
  /** what it belongs to, a heading */
  group: string;
  name: string;
  source: string;
  reference: number;
  /** SI unit, empty for a ratio */
  unit: string;
  /** relative, or absolute where `absolute` says so */
  tolerance: number;
  absolute?: boolean;
  compute: () => number;
}
