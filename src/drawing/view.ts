/** The mapping of metres to pixels: one scale for both directions, the axis in the middle, the ground below. */

export interface Extent {
  /** m, to either side of the axis */
  halfWidth: number;
  /** m, above the ground plane */
  height: number;
}

export interface View {
  width: number;
  height: number;
  /** px per m */
  scale: number;
  /** px of the axis from the left */
  axis: number;
  /** px of the ground plane from the top */
  ground: number;
}

interface Margins {
  side: number;
  top: number;
  bottom: number;
}

/** px per m; the minimum keeps the drawing upright in a box that is all margin, the maximum keeps the numbers finite. */
const LEAST_SCALE = 1;
const MOST_SCALE = 1e6;

/** The view that fits an extent into a box. */
export function fitView(extent: Extent, width: number, height: number, margins: Margins): View {
  const fitting = Math.min(
    (width - 2 * margins.side) / (2 * extent.halfWidth),
    (height - margins.top - margins.bottom) / extent.height,
  );
  const scale = Math.min(Math.max(fitting, LEAST_SCALE), MOST_SCALE);
  const used = extent.height * scale;
  const spare = height - margins.top - margins.bottom - used;
  return { width, height, scale, axis: width / 2, ground: margins.top + used + spare / 2 };
}

export function xOf(view: View, radius: number): number {
  return view.axis + radius * view.scale;
}

export function yOf(view: View, height: number): number {
  return view.ground - height * view.scale;
}

export function radiusOf(view: View, x: number): number {
  return (x - view.axis) / view.scale;
}

export function heightOf(view: View, y: number): number {
  return (view.ground - y) / view.scale;
}
