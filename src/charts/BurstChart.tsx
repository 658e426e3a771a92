import { useMemo, useState } from "react";
import type { BurstGroup } from "../evaluation/burst/burstResults";
import { ChoiceField } from "../ui/ChoiceField";
import { formatQuantity } from "../units/format";
import { shownUnit } from "../units/quantities";
import { useDesign, useEvaluation, useUnitSystem } from "../workbench/session/hooks";
import { type Domain, roundedDomain } from "./axis";
import { type BurstQuantity, frequencyCurves, swingCurves } from "./burstCurves";
import { BURST_PARTS, type BurstPart, burstWindow } from "./burstWindow";
import { Chart } from "./Chart";
import styles from "./Chart.module.css";
import type { Curve, Level, Marker, Strip } from "./curve";
import { withoutTrailingZeros } from "./withoutTrailingZeros";

const SWING_STEPS = 8;
const FREQUENCY_STEPS = 5;
const FREQUENCY_HEIGHT = 190;
/** A limit above this multiple of the peak is listed in the legend but does not widen the axis. */
const LIMIT_IN_VIEW = 2;

/** Symmetric about zero. */
function swingDomain(burst: BurstGroup, peak: "peakPrimaryCurrent" | "peakTopVoltage", level = 0): Domain {
  const most = Math.max(burst[peak], burst.unloaded[peak]);
  const reach = most === 0 || level <= LIMIT_IN_VIEW * most ? Math.max(most, level) : most;
  return roundedDomain({ from: -reach, to: reach }, SWING_STEPS);
}

function frequencyDomain(curves: readonly Curve[]): Domain {
  const values = curves.flatMap(({ points }) => points.map(({ y }) => y));
  return roundedDomain({ from: Math.min(...values), to: Math.max(...values) }, FREQUENCY_STEPS);
}

/** The switches that are on in each polarity: one of a half bridge, a diagonal of a full bridge. */
const SWITCHES = {
  full: ["High-side A + low-side B on", "Other diagonal on"],
  half: ["Upper switch on", "Lower switch on"],
} as const;

function gateStrips({ gates }: BurstGroup, bridge: "half" | "full"): Strip[] {
  const on = (polarity: 1 | -1) => gates.filter((gate) => gate.polarity === polarity);
  const [up, down] = SWITCHES[bridge];
  return [
    { id: "up", label: up, colour: "--ink", intervals: on(1) },
    { id: "down", label: down, colour: "--ink", open: true, intervals: on(-1) },
  ];
}

function eventMarkers(burst: BurstGroup, time: (value: number) => string): Marker[] {
  const { limitTrips, driveEnd, unloaded } = burst;
  const limit = (id: string, label: string, x: number | null, colour: string): Marker[] =>
    x === null ? [] : [{ id, label: `${label} ${time(x)}`, colour, x }];
  return [
    { id: "end", label: `Drive ends ${time(driveEnd)}`, colour: "--ink", x: driveEnd, solid: true },
    ...limit("limit", "Limit reached", limitTrips, "--error"),
    ...limit("limit-unloaded", "Limit reached, no spark", unloaded.limitTrips, "--ink-faint"),
  ];
}

interface SwingPlot {
  title: string;
  quantity: BurstQuantity;
  peak: "peakPrimaryCurrent" | "peakTopVoltage";
  dimension: "current" | "voltage";
  colour: string;
}

const CURRENT: SwingPlot = {
  title: "Primary current",
  quantity: "primaryCurrent",
  peak: "peakPrimaryCurrent",
  dimension: "current",
  colour: "--copper",
};
const VOLTAGE: SwingPlot = {
  title: "Top voltage",
  quantity: "topVoltage",
  peak: "peakTopVoltage",
  dimension: "voltage",
  colour: "--winding",
};

interface BurstPlotProps {
  burst: BurstGroup;
  part: BurstPart;
}

function useTimeAxis(window: Domain) {
  const system = useUnitSystem();
  const unit = shownUnit(window.to, "time", system);
  return {
    label: `time from the start of the burst, ${unit.symbol}`,
    domain: window,
    format: (value: number) => withoutTrailingZeros(formatQuantity(value, "time", system, 3).text),
    tick: (value: number) => String(Number((value / unit.factor).toPrecision(6))),
    everyTick: true,
  };
}

function SwingChart({ burst, part, plot }: BurstPlotProps & { plot: SwingPlot }) {
  const system = useUnitSystem();
  const limit = useDesign((design) => design.drive.overCurrentLimit);
  const bridge = useDesign((design) => design.drive.bridge);
  const window = useMemo(() => burstWindow(burst, part), [burst, part]);
  const x = useTimeAxis(window);
  const ofCurrent = plot.quantity === "primaryCurrent";
  const format = (value: number) =>
    withoutTrailingZeros(formatQuantity(value, plot.dimension, system, 3).text);
  const curves = useMemo(
    () => swingCurves(burst, plot.quantity, plot.colour, window, part === "whole burst"),
    [burst, plot, window, part],
  );
  const domain = swingDomain(burst, plot.peak, ofCurrent ? limit : 0);
  const levels: Level[] = [
    {
      id: "limit",
      label: `Over-current limit ${format(limit)}${limit > domain.to ? ", off scale" : ""}`,
      colour: "--error",
      y: limit,
      dash: "9 3 2 3",
      mirrored: true,
    },
  ];
  return (
    <Chart
      title={plot.title}
      x={x}
      y={{
        label: "in one burst",
        domain,
        format,
        everyTick: true,
      }}
      curves={curves}
      markers={eventMarkers(burst, x.format)}
      levels={ofCurrent ? levels : undefined}
      strips={ofCurrent ? gateStrips(burst, bridge) : undefined}
    />
  );
}

function FrequencyChart({ burst, part }: BurstPlotProps) {
  const system = useUnitSystem();
  const response = useEvaluation((evaluation) => evaluation.response);
  const window = useMemo(() => burstWindow(burst, part), [burst, part]);
  const x = useTimeAxis(window);
  const poles = response && {
    loaded: { lower: response.loadedLowerPole, upper: response.loadedUpperPole },
    unloaded: { lower: response.lowerPole, upper: response.upperPole },
  };
  const curves = frequencyCurves(burst, poles, window);
  if (burst.frequencyByCycle.length === 0)
    return (
      <p className={styles.none}>The drive ends before one full cycle, so there is no running frequency.</p>
    );
  return (
    <Chart
      title="Running frequency"
      x={x}
      y={{
        label: "cycle by cycle",
        domain: frequencyDomain(curves),
        format: (value) => withoutTrailingZeros(formatQuantity(value, "frequency", system, 4).text),
        everyTick: true,
      }}
      curves={curves}
      height={FREQUENCY_HEIGHT}
    />
  );
}

/** One burst over time: primary current, top voltage and running frequency, with and without the spark. */
export function BurstChart() {
  const burst = useEvaluation((evaluation) => evaluation.burst);
  const [part, setPart] = useState<BurstPart>("whole burst");
  if (!burst)
    return (
      <p className={styles.none}>
        The burst cannot be computed because a circuit has no solution; see the findings.
      </p>
    );
  if (!(burst.energy.supplied > 0))
    return (
      <p className={styles.none}>
        This burst has no drive, so there is nothing to draw: the on-time or the bus voltage is zero.
      </p>
    );
  const choose = (value: string) => setPart(BURST_PARTS.find((each) => each === value) ?? "whole burst");
  return (
    <>
      <ChoiceField label="Time shown" options={BURST_PARTS} value={part} onCommit={choose} />
      <SwingChart burst={burst} part={part} plot={CURRENT} />
      <SwingChart burst={burst} part={part} plot={VOLTAGE} />
      <FrequencyChart burst={burst} part={part} />
    </>
  );
}
