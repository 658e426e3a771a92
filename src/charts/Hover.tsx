import { useContext, useEffect } from "react";
import { useActiveTooltipCoordinate, useIsTooltipActive, usePlotArea, useXAxisInverseScale } from "recharts";
import type { Domain } from "./axis";
import { ChartContentContext } from "./chartContent";

/** The line under the pointer; the legend reads the values there. */
export function Hover({ domain }: { domain: Domain }) {
  const { onHover } = useContext(ChartContentContext);
  const active = useIsTooltipActive();
  const coordinate = useActiveTooltipCoordinate();
  const inverse = useXAxisInverseScale();
  const area = usePlotArea();
  const pixel = active ? coordinate?.x : undefined;
  const value = pixel === undefined || !inverse ? null : Number(inverse(pixel));
  const x = value !== null && value >= domain.from && value <= domain.to ? value : null;
  useEffect(() => onHover(x), [x, onHover]);
  if (x === null || pixel === undefined || !area) return null;
  return (
    <line
      x1={pixel}
      x2={pixel}
      y1={area.y}
      y2={area.y + area.height}
      stroke="var(--ink)"
      strokeWidth={0.8}
      pointerEvents="none"
    />
  );
}
