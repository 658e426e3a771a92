/** The largest surface field on the top load in a mode, and where it is. */
import { ELECTRIC_CONSTANT } from "../constants";
import { type Electrode, nodeCount, surfaceField } from "../field/electrode";
import { totalNodes } from "../field/influenceMatrix";
import type { ElectricField, LoadedField } from "./electricField";
import type { SecondaryMode } from "./secondaryModes";

export interface ElementField {
  /** V/m per volt at the top, largest on the element */
  largest: number;
  /** m, where it is */
  radius: number;
  height: number;
}

/** Charge of a node at 1 V at the top. */
function nodeCharge(loaded: LoadedField, mode: SecondaryMode, node: number): number {
  const columns = loaded.elastance.size;
  return mode.charges.reduce((sum, value, n) => sum + loaded.nodeCharges[node * columns + n] * value, 0);
}

/** Top of the parabola through three neighbouring values, the middle one the largest. */
function parabolaTop(before: number, middle: number, after: number): number {
  const curvature = before - 2 * middle + after;
  return curvature < 0 ? middle - (after - before) ** 2 / (8 * curvature) : middle;
}

function largestOn(electrode: Electrode, field: readonly number[]): ElementField {
  const peak = field.reduce((best, value, index) => (value > field[best] ? index : best), 0);
  const count = field.length;
  const neighbour = (index: number): number =>
    electrode.closed ? field[(index + count) % count] : field[Math.min(Math.max(index, 0), count - 1)];
  return {
    largest: parabolaTop(neighbour(peak - 1), field[peak], neighbour(peak + 1)),
    radius: electrode.radius[peak],
    height: electrode.height[peak],
  };
}

/**
 * Field of each element of the top load.
 * @returns empty if there is no top load
 */
export function topLoadFields(field: ElectricField, mode: SecondaryMode): ElementField[] {
  const { loaded, mesh } = field;
  if (!loaded) return [];
  let first = totalNodes(mesh.grounded);
  return mesh.topLoad.map((electrode) => {
    const values = Array.from(electrode.radius, (_, node) =>
      surfaceField(electrode, node, nodeCharge(loaded, mode, first + node), ELECTRIC_CONSTANT),
    );
    first += nodeCount(electrode);
    return largestOn(electrode, values);
  });
}
