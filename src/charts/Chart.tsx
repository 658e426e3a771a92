import { useCallback, useMemo, useRef, useState } from "react";
import { Contained } from "../ui/Contained";
import { useHeld } from "../ui/useHeld";
import { useQueuedRender } from "../ui/useQueuedRender";
import { useSize } from "../ui/useSize";
import { useSession } from "../workbench/session/hooks";
import { type Domain, linearTicks, logTicks } from "./axis";
import styles from "./Chart.module.css";
import { ChartFrame } from "./ChartFrame";
import { type ChartContent, ChartContentContext } from "./chartContent";
import type { Curve, Level, Marker, Strip } from "./curve";
import { DataTable } from "./DataTable";
import { Legend } from "./Legend";

export interface ChartAxis {
  label: string;
  domain: Domain;
  log?: boolean;
  format: (value: number) => string;
  /** for tick labels, if the axis label names the unit */
  tick?: (value: number) => string;
  /** labels every tick, where they are known to fit */
  everyTick?: boolean;
}

interface ChartProps {
  title: string;
  x: ChartAxis;
  y: ChartAxis;
  curves: readonly Curve[];
  markers?: readonly Marker[];
  levels?: readonly Level[];
  /** rows of blocks above the plot */
  strips?: readonly Strip[];
  onPlace?: ChartContent["onPlace"];
  /** px */
  height?: number;
}

const X_TICKS = 8;
const Y_TICKS = 5;
const HEIGHT = 236;
const TABLE_ROWS = 12;
const NO_MARKERS: readonly Marker[] = [];
const NO_LEVELS: readonly Level[] = [];
const NO_STRIPS: readonly Strip[] = [];

/** An axis that keeps its identity while its domain does, so that the frame is not rendered again. */
function useAxis(
  { label, domain, log = false, everyTick = false, format, tick = format }: ChartAxis,
  count: number,
) {
  const held = useHeld(
    domain,
    useSession((view) => view.gesture !== null),
  );
  const latest = useRef(tick);
  latest.current = tick;
  return useMemo(() => {
    const frozen = { from: held.from, to: held.to };
    const ticks = log ? logTicks(frozen) : linearTicks(frozen, count);
    return { label, domain: frozen, ticks, log, everyTick, format: (value: number) => latest.current(value) };
  }, [label, held.from, held.to, log, everyTick, count]);
}

function tableRows({ from, to }: Domain): number[] {
  return Array.from({ length: TABLE_ROWS + 1 }, (_, index) => from + ((to - from) * index) / TABLE_ROWS);
}

/** A chart with its legend, the values under the pointer, and a table for screen readers. */
export function Chart(chart: ChartProps) {
  return (
    <Contained what={`chart “${chart.title}”`}>
      <WholeChart {...chart} />
    </Contained>
  );
}

function WholeChart({
  title,
  x,
  y,
  curves,
  markers = NO_MARKERS,
  levels = NO_LEVELS,
  strips = NO_STRIPS,
  onPlace = null,
  height = HEIGHT,
}: ChartProps) {
  const plot = useRef<HTMLDivElement>(null);
  const { width } = useSize(plot, { width: 420, height });
  const isDrawn = useQueuedRender();
  const [hidden, setHidden] = useState<ReadonlySet<string>>(
    () => new Set(curves.filter((curve) => curve.shownAtFirst === false).map((curve) => curve.id)),
  );
  const [hover, setHover] = useState<number | null>(null);
  const onHover = useCallback((value: number | null) => setHover(value), []);
  const xAxis = useAxis(x, X_TICKS);
  // so few labels always fit
  const yAxis = useAxis(y.log ? y : { ...y, everyTick: true }, Y_TICKS);
  const shown = useMemo(() => curves.filter((curve) => !hidden.has(curve.id)), [curves, hidden]);
  const switchCurve = (id: string) =>
    setHidden(
      (before) => new Set(before.has(id) ? [...before].filter((each) => each !== id) : [...before, id]),
    );
  const rows = useMemo(() => tableRows(xAxis.domain), [xAxis.domain]);
  return (
    <figure className={styles.chart}>
      <figcaption className={styles.title}>
        {title}
        <span className={styles.unit}>{y.label}</span>
        <output className={styles.at}>{hover === null ? "" : x.format(hover)}</output>
      </figcaption>
      <div
        className={styles.plot}
        style={{ minHeight: height }}
        ref={plot}
        role="img"
        aria-label={`${title}: ${y.label} against ${x.label}`}
      >
        {isDrawn && (
          <ChartContentContext value={{ curves: shown, markers, levels, strips, onHover, onPlace }}>
            <ChartFrame width={width} height={height} x={xAxis} y={yAxis} strips={strips.length} />
          </ChartContentContext>
        )}
      </div>
      <Legend
        curves={curves}
        markers={markers}
        levels={levels}
        strips={strips}
        hidden={hidden}
        onSwitch={switchCurve}
        x={hover}
        format={y.format}
      />
      <DataTable
        caption={title}
        xLabel={x.label}
        xs={rows}
        curves={shown}
        formatX={x.format}
        formatY={y.format}
      />
    </figure>
  );
}
