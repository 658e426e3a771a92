/** One line of a chart. */
export interface Curve {
  id: string;
  label: string;
  /** a colour token of the house, such as `--copper` */
  colour: string;
  dash?: string;
  /** in order of x; what is not finite, or not positive on a log axis, becomes a gap */
  points: readonly { x: number; y: number }[];
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
    if (!Number.isFinite(y) || (log && y <= 0)) {
      pen = "M";
      continue;
    }
    path += `${pen}${toX(x).toFixed(1)} ${toY(y).toFixed(1)}`;
    pen = "L";
  }
  return path;
}
