/** One line of a chart. */
export interface Curve {
  id: string;
  label: string;
  /** a colour token, such as `--copper` */
  colour: string;
  dash?: string;
  /** in order of x; values that are not finite, or not positive on a log axis, leave a gap */
  points: readonly { x: number; y: number }[];
  /** px; 1.9 by default */
  width?: number;
  /** mirrored about zero, as an envelope, and filled with a tint unless dashed */
  mirrored?: boolean;
  /** false hides the curve until it is switched on in the legend */
  shownAtFirst?: boolean;
}

/** A marked place on the x axis. */
export interface Marker {
  id: string;
  label: string;
  colour: string;
  x: number;
  band?: { low: number; high: number };
  /** dashed by default; the marker of the present value is always solid */
  solid?: boolean;
}

/** A value marked across the whole chart. */
export interface Level {
  id: string;
  label: string;
  colour: string;
  y: number;
  dash?: string;
  /** on both sides of zero */
  mirrored?: boolean;
}

/** Intervals during which something is on: a row of blocks above the plot. */
export interface Strip {
  id: string;
  label: string;
  colour: string;
  /** outlined instead of filled */
  open?: boolean;
  intervals: readonly { from: number; to: number }[];
}

/** The y value of a curve at x, interpolated linearly between its points; null outside them. */
export function valueAtX(curve: Curve, x: number): number | null {
  const { points } = curve;
  const next = points.findIndex((point) => point.x >= x);
  if (next < 0 || points.length === 0) return null;
  if (points[next].x === x) return points[next].y;
  if (next === 0) return null;
  const [a, b] = [points[next - 1], points[next]];
  return a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y);
}

/** px from the corner; anything farther out is out of view, and a path takes no number beyond 3e38. */
const FARTHEST = 1e6;

/** A coordinate limited to what a path or a line can take. */
export function clampedPixels(pixels: number): number {
  return Math.max(-FARTHEST, Math.min(FARTHEST, pixels));
}

/** Rounded to a tenth of a pixel: paths get shorter, and it is many times faster than `toFixed`. */
function tenth(pixels: number): number {
  return Math.round(10 * clampedPixels(pixels)) / 10;
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

/** A closed path around the area between a curve and its mirror image about zero. */
export function mirroredPath(
  points: readonly { x: number; y: number }[],
  toX: (x: number) => number,
  toY: (y: number) => number,
): string {
  const below = points.map(({ x, y }) => ({ x, y: -y })).reverse();
  return curvePath([...points, ...below], toX, toY, false);
}
