import type { Sphere, Toroid } from "../calc/design-parts";

/** A common size to start from; any other size is reached by editing it. */
export interface StockTopLoad {
  name: string;
  element: Omit<Toroid, "centreHeight"> | Omit<Sphere, "centreHeight">;
}

const INCH = 0.0254;

function toroid(name: string, outerDiameter: number, tubeDiameter: number): StockTopLoad {
  return { name, element: { shape: "toroid", outerDiameter, tubeDiameter } };
}

function sphere(name: string, diameter: number): StockTopLoad {
  return { name, element: { shape: "sphere", diameter } };
}

/** Common sizes of spun toroids and ducting; common practice, no source. */
export const STOCK_TOP_LOADS: readonly StockTopLoad[] = [
  toroid("200 × 50 mm toroid", 0.2, 0.05),
  toroid("300 × 75 mm toroid", 0.3, 0.075),
  toroid("400 × 100 mm toroid", 0.4, 0.1),
  toroid("460 × 110 mm toroid", 0.46, 0.11),
  toroid("550 × 130 mm toroid", 0.55, 0.13),
  toroid("700 × 160 mm toroid", 0.7, 0.16),
  toroid("1000 × 250 mm toroid", 1, 0.25),
  toroid("12 × 3 in toroid", 12 * INCH, 3 * INCH),
  toroid("18 × 4 in toroid", 18 * INCH, 4 * INCH),
  toroid("24 × 6 in toroid", 24 * INCH, 6 * INCH),
  toroid("36 × 8 in toroid", 36 * INCH, 8 * INCH),
  sphere("200 mm sphere", 0.2),
  sphere("300 mm sphere", 0.3),
  sphere("400 mm sphere", 0.4),
];
