import { useContext } from "react";
import { usePlotArea, useXAxisScale } from "recharts";
import { ChartContentContext } from "./chartContent";
import type { Strip } from "./curve";

/** px from one row to the next */
export const STRIP_PITCH = 10;
const BLOCK_HEIGHT = 7;

/** All blocks of a row as one path, clipped to the axis. */
function blocksPath({ intervals }: Strip, toX: (x: number) => number, from: number, to: number): string {
  return intervals
    .map((interval) => [Math.max(from, toX(interval.from)), Math.min(to, toX(interval.to))])
    .filter(([left, right]) => right > left)
    .map(([left, right]) => `M${left.toFixed(1)} 0H${right.toFixed(1)}V${BLOCK_HEIGHT}H${left.toFixed(1)}Z`)
    .join("");
}

/** Rows of blocks above the plot. */
export function Strips() {
  const { strips } = useContext(ChartContentContext);
  const area = usePlotArea();
  const scale = useXAxisScale();
  if (!area || !scale) return null;
  const toX = (x: number): number => scale(x) ?? 0;
  return (
    <g pointerEvents="none">
      {strips.map((strip, row) => (
        <path
          key={strip.id}
          d={blocksPath(strip, toX, area.x, area.x + area.width)}
          transform={`translate(0 ${area.y - (strips.length - row) * STRIP_PITCH})`}
          stroke={`var(${strip.colour})`}
          strokeWidth={0.8}
          fill={strip.open ? "none" : `var(${strip.colour})`}
        />
      ))}
    </g>
  );
}
