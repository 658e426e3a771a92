/** The charges of a coil's mode as rings, for its coupling to another coil. */
import { type Electrode, nodeCount } from "../field/electrode";
import type { ElectricField } from "./electricField";
import type { SecondaryMode } from "./secondaryModes";

export interface ChargeRing {
  /** m */
  radius: number;
  /** m above the ground plane */
  height: number;
  /** C at 1 V at the top */
  charge: number;
}

function windingRings({ mesh, functions }: ElectricField, mode: SecondaryMode): ChargeRing[] {
  const { winding } = mesh;
  return Array.from({ length: nodeCount(winding) }, (_, node) => {
    const t = (node + 0.5) * winding.step;
    let density = 0;
    for (let n = 0; n < functions; n++) density += mode.charges[n] * Math.cos(n * t);
    return { radius: winding.radius[node], height: winding.height[node], charge: winding.step * density };
  });
}

function electrodeRings(electrodes: readonly Electrode[], charges: readonly number[]): ChargeRing[] {
  let row = 0;
  return electrodes.flatMap((electrode) =>
    Array.from({ length: nodeCount(electrode) }, (_, node) => ({
      radius: electrode.radius[node],
      height: electrode.height[node],
      charge: charges[row++],
    })),
  );
}

/**
 * Rings of winding, grounded conductors and top load, in that order.
 * @param mode of the winding with its top load
 * @returns null if there is no top load: the charges on its neighbours are then not kept
 */
export function chargeRings(field: ElectricField, mode: SecondaryMode): ChargeRing[] | null {
  const { mesh, loaded } = field;
  if (!loaded) return null;
  const { size } = loaded.elastance;
  const rows = loaded.nodeCharges.length / size;
  const charges = Array.from({ length: rows }, (_, row) =>
    mode.charges.reduce((sum, value, n) => sum + loaded.nodeCharges[row * size + n] * value, 0),
  );
  return [...windingRings(field, mode), ...electrodeRings([...mesh.grounded, ...mesh.topLoad], charges)];
}
