/** The top load on its own: capacitance in free space, size, surface and mass. */
import type { TopLoadElement } from "../design-parts";
import { type Electrode, ringElectrode, sphereElectrode } from "../field/electrode";
import { influenceMatrix, totalNodes } from "../field/influenceMatrix";
import { factorise, substitute } from "../linear/elimination";

const NODES = 32;

function electrodeOf(element: TopLoadElement, nodes: number): Electrode {
  if (element.shape === "sphere") return sphereElectrode(element.diameter / 2, element.centreHeight, nodes);
  const tubeRadius = element.tubeDiameter / 2;
  return ringElectrode(element.outerDiameter / 2 - tubeRadius, tubeRadius, element.centreHeight, nodes);
}

/**
 * Capacitance of all elements at one potential, alone in free space, F.
 * @param elements at least one, not crossing
 * @returns null if the elements are so close that the elimination fails
 */
export function isolatedCapacitance(elements: readonly TopLoadElement[], nodes = NODES): number | null {
  const electrodes = elements.map((element) => electrodeOf(element, nodes));
  const size = totalNodes(electrodes);
  const matrix = influenceMatrix(electrodes, null);
  if (!factorise(matrix, size)) return null;
  const charges = new Float64Array(size).fill(1);
  substitute(matrix, size, size, charges, 1);
  return charges.reduce((sum, charge) => sum + charge, 0);
}

interface Body {
  /** m */
  outerDiameter: number;
  height: number;
  /** m² */
  surfaceArea: number;
  /** kg */
  mass: number;
}

/** Pappus: the tube's circumference times the path of its centre. */
function surface(element: TopLoadElement): number {
  return element.shape === "sphere"
    ? Math.PI * element.diameter ** 2
    : Math.PI ** 2 * (element.outerDiameter - element.tubeDiameter) * element.tubeDiameter;
}

/** Sheet thickness of spun aluminium, m; common practice, no source. */
const SHEET = 1.2e-3;
/** kg/m³, aluminium; CRC Handbook of Chemistry and Physics. */
const ALUMINIUM_DENSITY = 2700;

/** Size, surface and mass of the elements, at least one. */
export function topLoadBody(elements: readonly TopLoadElement[]): Body {
  const half = (element: TopLoadElement): number =>
    (element.shape === "sphere" ? element.diameter : element.tubeDiameter) / 2;
  const widths = elements.map((element) =>
    element.shape === "sphere" ? element.diameter : element.outerDiameter,
  );
  const tops = elements.map((element) => element.centreHeight + half(element));
  const undersides = elements.map((element) => element.centreHeight - half(element));
  const surfaceArea = elements.reduce((sum, element) => sum + surface(element), 0);
  return {
    outerDiameter: Math.max(...widths),
    height: Math.max(...tops) - Math.min(...undersides),
    surfaceArea,
    mass: surfaceArea * SHEET * ALUMINIUM_DENSITY,
  };
}
