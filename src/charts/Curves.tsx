import { useContext, useId } from "react";
import { usePlotArea, useXAxisScale, useYAxisScale } from "recharts";
import { ChartContentContext } from "./chartContent";
import { curvePath, mirroredPath } from "./curve";

const TINT = 0.1;

/** The curves, drawn as plain SVG paths clipped to the plot. */
export function Curves({ log }: { log: boolean }) {
  const { curves } = useContext(ChartContentContext);
  const clip = useId();
  const area = usePlotArea();
  const [scaleX, scaleY] = [useXAxisScale(), useYAxisScale()];
  if (!area || !scaleX || !scaleY) return null;
  const toX = (x: number): number => scaleX(x) ?? 0;
  const toY = (y: number): number => scaleY(y) ?? 0;
  return (
    // a curve over a marker must not intercept its pointer events
    <g pointerEvents="none">
      <clipPath id={clip}>
        <rect x={area.x} y={area.y} width={area.width} height={area.height} />
      </clipPath>
      <g clipPath={`url(#${clip})`} fill="none" strokeWidth={1.9} strokeLinejoin="round">
        {curves.map(({ id, colour, dash, width, mirrored = false, points }) => (
          <path
            key={id}
            d={mirrored ? mirroredPath(points, toX, toY) : curvePath(points, toX, toY, log)}
            stroke={`var(${colour})`}
            strokeWidth={width}
            strokeDasharray={dash}
            fill={mirrored && !dash ? `var(${colour})` : undefined}
            fillOpacity={mirrored ? TINT : undefined}
          />
        ))}
      </g>
    </g>
  );
}
