import { type PointerEvent, useContext } from "react";
import { usePlotArea, useXAxisInverseScale, useXAxisScale } from "recharts";
import { ChartContentContext } from "./chartContent";
import type { Marker } from "./curve";

const GRASP = 26;

function Band({
  marker,
  left,
  right,
  top,
  height,
}: {
  marker: Marker;
  left: number;
  right: number;
  top: number;
  height: number;
}) {
  return (
    <rect
      x={left}
      y={top}
      width={Math.max(1, right - left)}
      height={height}
      fill={`var(${marker.colour})`}
      fillOpacity={0.16}
    />
  );
}

/** Marked places on the x axis; the live one can be dragged where the chart allows it. */
export function Markers() {
  const { markers, onPlace } = useContext(ChartContentContext);
  const area = usePlotArea();
  const [scale, inverse] = [useXAxisScale(), useXAxisInverseScale()];
  if (!area || !scale) return null;
  const toX = (x: number): number => scale(x) ?? 0;
  const place = (phase: "begin" | "move" | "end" | "cancel") => (event: PointerEvent<SVGRectElement>) => {
    if (!onPlace || !inverse) return;
    if (phase === "begin") event.currentTarget.setPointerCapture(event.pointerId);
    if (phase === "move" && !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const box = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
    onPlace(Number(inverse(event.clientX - (box?.left ?? 0))), phase);
  };
  return (
    <g>
      {markers.map((marker) => (
        <g key={marker.id}>
          {marker.band && (
            <Band
              marker={marker}
              left={toX(marker.band.low)}
              right={toX(marker.band.high)}
              top={area.y}
              height={area.height}
            />
          )}
          <line
            x1={toX(marker.x)}
            x2={toX(marker.x)}
            y1={area.y}
            y2={area.y + area.height}
            stroke={`var(${marker.colour})`}
            strokeWidth={marker.id === "present" ? 2 : 1.3}
            strokeDasharray={marker.id === "present" ? undefined : "6 4"}
          />
          {marker.id === "present" && onPlace && (
            <rect
              x={toX(marker.x) - GRASP / 2}
              y={area.y}
              width={GRASP}
              height={area.height}
              fill="transparent"
              style={{ cursor: "ew-resize", touchAction: "none" }}
              onPointerDown={place("begin")}
              onPointerMove={place("move")}
              onPointerUp={place("end")}
              onPointerCancel={place("cancel")}
            />
          )}
        </g>
      ))}
    </g>
  );
}
