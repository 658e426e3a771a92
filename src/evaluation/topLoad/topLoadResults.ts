/** Results of the top load, in SI units. */

export interface TopLoadResult {
  capacitance: number;
  surfaceFieldPerVolt: number;
  breakoutVoltage: number;
  breakoutVoltageAtPoint: { low: number; typical: number; high: number } | null;
  /** m, overall */
  outerDiameter: number;
  height: number;
  /** m², outside surface */
  surfaceArea: number;
  /** kg, as spun aluminium (common practice wall) */
  mass: number;
}
