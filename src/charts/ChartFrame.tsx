import { memo, useContext, useEffect } from "react";
import {
  CartesianGrid,
  LineChart,
  Tooltip,
  useActiveTooltipCoordinate,
  useIsTooltipActive,
  usePlotArea,
  useXAxisInverseScale,
  XAxis,
  YAxis,
} from "recharts";
import type { Domain } from "./axis";
import { Curves } from "./Curves";
import { ChartContentContext } from "./chartContent";
import { Levels } from "./Levels";
import { Markers } from "./Markers";
import { STRIP_PITCH, Strips } from "./Strips";

/** The line under the pointer; the legend shows the values there. */
function Hover({ domain }: { domain: Domain }) {
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

export interface AxisFrame {
  label: string;
  domain: Domain;
  ticks: number[];
  log: boolean;
  everyTick: boolean;
  format: (value: number) => string;
}

interface ChartFrameProps {
  width: number;
  height: number;
  x: AxisFrame;
  y: AxisFrame;
  /** rows above the plot */
  strips: number;
}

const MARGIN = { top: 8, right: 14, bottom: 20, left: 6 };
const TICK = { fill: "var(--ink-soft)", fontFamily: "var(--font-caption)", fontSize: 12.5 };
const GRID_POINTS = 120;

/** The x values that the pointer can select; they do not depend on the curves. */
function gridOf({ domain, log }: AxisFrame): { x: number }[] {
  return Array.from({ length: GRID_POINTS + 1 }, (_, index) => {
    const part = index / GRID_POINTS;
    return {
      x: log
        ? domain.from * (domain.to / domain.from) ** part
        : domain.from + part * (domain.to - domain.from),
    };
  });
}

function axisProps(axis: AxisFrame) {
  return {
    type: "number" as const,
    domain: [axis.domain.from, axis.domain.to] as [number, number],
    ticks: axis.ticks,
    scale: axis.log ? ("log" as const) : ("linear" as const),
    tickFormatter: axis.format,
    tick: TICK,
    stroke: "var(--rule-strong)",
    allowDataOverflow: true,
    interval: axis.everyTick ? 0 : ("equidistantPreserveStart" as const),
  };
}

/** Axes and grid; they are rendered again only when a domain changes. */
export const ChartFrame = memo(function ChartFrame({ width, height, x, y, strips }: ChartFrameProps) {
  const margin = { ...MARGIN, top: MARGIN.top + strips * STRIP_PITCH };
  return (
    <LineChart width={width} height={height} data={gridOf(x)} margin={margin} accessibilityLayer={false}>
      <CartesianGrid stroke="var(--rule)" strokeOpacity={0.35} />
      <XAxis
        {...axisProps(x)}
        dataKey="x"
        label={{ value: x.label, position: "insideBottom", offset: -12, ...TICK }}
      />
      <YAxis {...axisProps(y)} dataKey={() => y.domain.from} width={58} />
      <Tooltip content={() => null} cursor={false} isAnimationActive={false} />
      <Levels />
      <Markers />
      <Strips />
      <Curves log={y.log} />
      <Hover domain={x.domain} />
    </LineChart>
  );
});
