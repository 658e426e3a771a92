import { type Electrode, nodeCount } from "./electrode";
import { fillInfluence, type Mirrors } from "./influence";

/** Number of nodes of all electrodes together. */
export function totalNodes(electrodes: readonly Electrode[]): number {
  return electrodes.reduce((sum, electrode) => sum + nodeCount(electrode), 0);
}

function mirrorBlock(
  matrix: Float64Array,
  size: number,
  row: number,
  column: number,
  rows: number,
  columns: number,
): void {
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < columns; j++)
      matrix[(column + j) * size + row + i] = matrix[(row + i) * size + column + j];
  }
}

/**
 * Potential, V, at each node of all electrodes per charge, C, of each node: symmetric, nodes² values row
 * by row, the electrodes one after another. A block below the diagonal is the mirror of the one above it.
 * @param mirrors null: free space
 */
export function influenceMatrix(electrodes: readonly Electrode[], mirrors: Mirrors | null): Float64Array {
  const size = totalNodes(electrodes);
  const matrix = new Float64Array(size * size);
  let row = 0;
  for (const [index, at] of electrodes.entries()) {
    let column = row;
    for (const from of electrodes.slice(index)) {
      fillInfluence(at, from, mirrors, matrix, size, row, column);
      if (from !== at) mirrorBlock(matrix, size, row, column, nodeCount(at), nodeCount(from));
      column += nodeCount(from);
    }
    row += nodeCount(at);
  }
  return matrix;
}
