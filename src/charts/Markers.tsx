import { type PointerEvent, useContext, useEffect, useRef } from "react";
import { usePlotArea, useXAxisInverseScale, useXAxisScale } from "recharts";
import { ChartContentContext } from "./chartContent";
import { clampedPixels, type Marker } from "./curve";

/** px */
const HIT_WIDTH = 26;

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

type Phase = "begin" | "move" | "end" | "cancel";

interface Drag {
  /** px, from the pointer to the marker */
  offset: number;
  /** removes the listener for Esc */
  release: () => void;
}

interface MarkerHandleProps {
  /** px */
  x: number;
  top: number;
  height: number;
  xAt: (pixel: number) => number;
  onPlace: (x: number, phase: Phase) => void;
}

/** The draggable area of a marker; Esc cancels the drag. */
function MarkerHandle({ x, top, height, xAt, onPlace }: MarkerHandleProps) {
  const drag = useRef<Drag | null>(null);
  const pixelOf = (event: PointerEvent<SVGRectElement>): number =>
    event.clientX - (event.currentTarget.ownerSVGElement?.getBoundingClientRect().left ?? 0);
  const end = (phase: "end" | "cancel") => {
    if (!drag.current) return;
    drag.current.release();
    drag.current = null;
    onPlace(xAt(x), phase);
  };
  const begin = (event: PointerEvent<SVGRectElement>) => {
    const onKeyDown = ({ key }: KeyboardEvent) => {
      if (key === "Escape") end("cancel");
    };
    event.currentTarget.setPointerCapture(event.pointerId);
    window.addEventListener("keydown", onKeyDown);
    const release = () => window.removeEventListener("keydown", onKeyDown);
    drag.current = { offset: x - pixelOf(event), release };
    onPlace(xAt(x), "begin");
  };
  useEffect(() => () => drag.current?.release(), []);
  return (
    <rect
      x={x - HIT_WIDTH / 2}
      y={top}
      width={HIT_WIDTH}
      height={height}
      fill="transparent"
      style={{ cursor: "ew-resize", touchAction: "none" }}
      onPointerDown={begin}
      onPointerMove={(event) => drag.current && onPlace(xAt(pixelOf(event) + drag.current.offset), "move")}
      onPointerUp={() => end("end")}
      onPointerCancel={() => end("cancel")}
    />
  );
}

/** Marked places on the x axis; the present value can be dragged where the chart allows it. */
export function Markers() {
  const { markers, onPlace } = useContext(ChartContentContext);
  const area = usePlotArea();
  const [scale, inverse] = [useXAxisScale(), useXAxisInverseScale()];
  if (!area || !scale) return null;
  const toX = (x: number): number => clampedPixels(scale(x) || 0);
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
            strokeDasharray={marker.solid || marker.id === "present" ? undefined : "6 4"}
          />
          {marker.id === "present" && onPlace && inverse && (
            <MarkerHandle
              x={toX(marker.x)}
              top={area.y}
              height={area.height}
              xAt={(pixel) => Number(inverse(pixel))}
              onPlace={onPlace}
            />
          )}
        </g>
      ))}
    </g>
  );
}
