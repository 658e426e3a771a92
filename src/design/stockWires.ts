/** Standard sizes of enamelled round copper wire to start from; any size may be typed. */

export interface StockWire {
  /** such as “0.315 mm, grade 1” */
  name: string;
  /** m, nominal bare */
  conductorDiameter: number;
  /** m, largest over the enamel of its grade */
  overallDiameter: number;
}

const MILLIMETRE = 1e-3;

/** Both grades of a size, in millimetres. */
function wire(conductor: number, ...overall: readonly [grade1: number, grade2: number]): StockWire[] {
  return overall.map((each, index) => ({
    name: `${conductor} mm, grade ${index + 1}`,
    conductorDiameter: conductor * MILLIMETRE,
    overallDiameter: each * MILLIMETRE,
  }));
}

/**
 * Wire sizes for secondaries. Wire from a reel may be 4 to 8 % thinner over the enamel than the standard's
 * maximum (makers' minima), so measure it before winding.
 * Source: iec60317, dimensions: nominal bare diameter, maximum overall of grades 1 and 2, mm.
 */
export const STOCK_WIRES: readonly StockWire[] = [
  ...wire(0.1, 0.117, 0.125),
  ...wire(0.112, 0.13, 0.139),
  ...wire(0.125, 0.144, 0.154),
  ...wire(0.14, 0.16, 0.171),
  ...wire(0.15, 0.171, 0.182),
  ...wire(0.16, 0.182, 0.194),
  ...wire(0.18, 0.204, 0.217),
  ...wire(0.2, 0.226, 0.239),
  ...wire(0.224, 0.252, 0.266),
  ...wire(0.25, 0.281, 0.297),
  ...wire(0.28, 0.312, 0.329),
  ...wire(0.3, 0.334, 0.352),
  ...wire(0.315, 0.349, 0.367),
  ...wire(0.355, 0.392, 0.411),
  ...wire(0.4, 0.439, 0.459),
  ...wire(0.45, 0.491, 0.513),
  ...wire(0.5, 0.544, 0.566),
  ...wire(0.56, 0.606, 0.63),
  ...wire(0.63, 0.679, 0.704),
  ...wire(0.71, 0.762, 0.789),
  ...wire(0.8, 0.855, 0.884),
  ...wire(0.9, 0.959, 0.989),
  ...wire(1, 1.062, 1.094),
];

/** m; sizes differ by far more */
const TOLERANCE = 1e-7;

/** The stock wire with both diameters; null if there is none. */
export function stockWireOf({
  conductorDiameter,
  overallDiameter,
}: Omit<StockWire, "name">): StockWire | null {
  const isSame = (one: number, other: number) => Math.abs(one - other) < TOLERANCE;
  return (
    STOCK_WIRES.find(
      (each) =>
        isSame(each.conductorDiameter, conductorDiameter) && isSame(each.overallDiameter, overallDiameter),
    ) ?? null
  );
}
