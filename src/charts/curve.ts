/** One line of a chart. */
export interface Curve {
  id: string;
  label: string;
  /** a colour token of the house, such as `--copper` */
  colour: string;
  dash?: string;
  /** in order of x; what is not finite, or not positive on a log axis, becomes a gap */
  points: readonly { x: number; y: number }[];
  /** px; 1.9 unless told */
  width?: number;
  /** drawn below zero as well, with a tint of its colour between unless dashed: what bounds a swing */
  mirrored?: boolean;
  /** drawn unless switched off; `false`: switched off to begin with */
  shownAtFirst?: boolean;
}

/** A place on the x axis that is marked. */
export interface Marker {
  id: string;
  label: string;
  colour: string;
  x: number;
  band?: { low: number; high: number };
  /** dashed unless told or live */
  solid?: boolean;
}

/** A value that is marked across the whole chart. */
export interface Level {
  id: string;
  label: string;
  colour: string;
  y: number;
  dash?: string;
  /** on both sides of zero */
  mirrored?: boolean;
}

/** Times at which something is on: a row of blocks above the plot. */
export interface Strip {
  id: string;
  label: string;
  colour: string;
  /** outlined, where its neighbour's blocks are filled */
  open?: boolean;
  intervals: readonly { from: number; to: number }[];
}

/** The y value of a curve at x, straight between its points; null outside them. */
export function valueAtX(curve: Curve, x: number): number | null {
  const { points } = curve;
  const above = points.findIndex((point) => point.x >= x);
  if (above < 0 || points.length === 0) return null;
  if (points[above].x === x) return points[above].y;
  if (above === 0) return null;
  const [a, b] = [points[above - 1], points[above]];
  return a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y);
}

/** px from the corner; what lies farther out is never in sight, and a path holds no number beyond 3e38. */
const FARTHEST = 1e6;

/** A place that a path or a line can hold. */
export function inReach(pixels: number): number {
  return Math.max(-FARTHEST, Math.min(FARTHEST, pixels));
}

/** Rounded to a tenth of a pixel: shorter paths, and many times quicker than text of fixed digits. */
function tenth(pixels: number): number {
  return Math.round(10 * inReach(pixels)) / 10;
}

/** The path of a curve through pixels, broken where a point cannot be drawn. */
export function curvePath(
  points: readonly { x: number; y: number }[],
  toX: (x: number) => number,
  toY: (y: number) => number,
  log: boolean,
): string {
  let path = "";
  let pen = "M";
  for (const { x, y } of points) {
    if (!Number.isFinite(y) || Number.isNaN(toX(x)) || (log && y <= 0)) {
      pen = "M";
      continue;
    }
    path += `${pen}${tenth(toX(x))} ${tenth(toY(y))}`;
    pen = "L";
  }
  return path;
}

/** A path around what a curve bounds on both sides of zero: out above it, back below. */
export function mirroredPath(
  points: readonly { x: number; y: number }[],
  toX: (x: number) => number,
  toY: (y: number) => number,
): string {
  const below = points.map(({ x, y }) => ({ x, y: -y })).reverse();
  return curvePath([...points, ...below], toX, toY, false);
}
