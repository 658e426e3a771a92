import { useContext } from "react";
import { usePlotArea, useYAxisScale } from "recharts";
import { ChartContentContext } from "./chartContent";

/** Values marked across the chart; one outside the axis is not drawn, but the legend lists it. */
export function Levels() {
  const { levels } = useContext(ChartContentContext);
  const area = usePlotArea();
  const scale = useYAxisScale();
  if (!area || !scale) return null;
  const within = (pixel: number): boolean => pixel >= area.y && pixel <= area.y + area.height;
  return (
    <g pointerEvents="none">
      {levels.map(({ id, colour, y, dash, mirrored }) =>
        (mirrored ? [y, -y] : [y])
          .map((value) => scale(value) ?? Number.NaN)
          .filter(within)
          .map((pixel) => (
            <line
              key={`${id} ${pixel}`}
              x1={area.x}
              x2={area.x + area.width}
              y1={pixel}
              y2={pixel}
              stroke={`var(${colour})`}
              strokeWidth={1.2}
              strokeDasharray={dash}
            />
          )),
      )}
    </g>
  );
}
