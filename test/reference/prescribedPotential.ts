/** Charges on all conductors of a coil whose potentials are given, and the capacitance matrix made of them. */

import type { CoilMesh } from "../../src/calc/coil/mesh";
import { type Electrode, nodeCount } from "../../src/calc/field/electrode";
import type { Mirrors } from "../../src/calc/field/influence";
import { influenceMatrix, totalNodes } from "../../src/calc/field/influenceMatrix";
import { factorise, substitute } from "../../src/calc/linear/elimination";

export interface PrescribedCharges {
  /** C of each node of the winding, the grounded electrodes and the top load, in that order */
  charges: Float64Array;
  /** V of the same nodes */
  potentials: Float64Array;
}

function electrodesOf(mesh: CoilMesh): Electrode[] {
  return [mesh.winding, ...mesh.grounded, ...mesh.topLoad];
}

/**
 * Charges for given potentials.
 * @param windingPotential V at a height on the winding, z/length from 0 to 1
 * @param topPotential V of the top load
 * @param groundedPotential V of primary, rail and wall
 */
export function prescribedCharges(
  mesh: CoilMesh,
  mirrors: Mirrors | null,
  windingPotential: (part: number) => number,
  topPotential: number,
  groundedPotential = 0,
): PrescribedCharges {
  const electrodes = electrodesOf(mesh);
  const size = totalNodes(electrodes);
  const nodes = nodeCount(mesh.winding);
  const grounded = totalNodes(mesh.grounded);
  const potentials = Float64Array.from({ length: size }, (_, i) => {
    if (i < nodes) return windingPotential(0.5 * (1 - Math.cos((i + 0.5) * mesh.winding.step)));
    return i < nodes + grounded ? groundedPotential : topPotential;
  });
  const matrix = influenceMatrix(electrodes, mirrors);
  factorise(matrix, size);
  const charges = potentials.slice();
  substitute(matrix, size, size, charges, 1);
  return { charges, potentials };
}

/** Total charge of winding, grounded conductors and top load, C. */
export function totalCharges(
  mesh: CoilMesh,
  charges: Float64Array,
): { winding: number; grounded: number; topLoad: number } {
  const nodes = nodeCount(mesh.winding);
  const grounded = totalNodes(mesh.grounded);
  const sum = (from: number, to?: number): number =>
    charges.subarray(from, to).reduce((total, charge) => total + charge, 0);
  return { winding: sum(0, nodes), grounded: sum(nodes, nodes + grounded), topLoad: sum(nodes + grounded) };
}

/** Maxwell's capacitance matrix of winding (at one potential), grounded conductors and top load, F. */
export function capacitanceMatrix(mesh: CoilMesh, mirrors: Mirrors): number[][] {
  return [0, 1, 2].map((column) => {
    const at = (index: number): number => (index === column ? 1 : 0);
    const { charges } = prescribedCharges(mesh, mirrors, () => at(0), at(2), at(1));
    const { winding, grounded, topLoad } = totalCharges(mesh, charges);
    return [winding, grounded, topLoad];
  });
}
