import type { TuningPoint } from "../calc/circuit/tuningCurve";
import type { TuningResult } from "../evaluation/tuning/tuningResults";
import { formatQuantity } from "../units/format";
import { useDesign, useEvaluation, useUnitSystem } from "../workbench/session/hooks";
import { dragTap } from "../workbench/session/moveTap";
import { roundedDomain } from "./axis";
import { Chart } from "./Chart";
import styles from "./Chart.module.css";
import type { Curve, Marker } from "./curve";

const Y_TICKS = 5;
/** The chart shows this fraction below and above the target frequency. */
const REACH = 0.32;

function across(curve: readonly TuningPoint[], y: number): { x: number; y: number }[] {
  return [curve[0], curve[curve.length - 1]].map(({ tap }) => ({ x: tap, y }));
}

function against(
  curve: readonly TuningPoint[],
  value: (point: TuningPoint) => number,
): { x: number; y: number }[] {
  return curve.map((point) => ({ x: point.tap, y: value(point) }));
}

interface Resonances {
  unloaded: number;
  loaded: number;
}

function curvesOf(curve: readonly TuningPoint[], resonances: Resonances): Curve[] {
  return [
    {
      id: "primary",
      label: "Primary",
      colour: "--copper",
      points: against(curve, (point) => point.primaryResonance),
    },
    {
      id: "unloaded",
      label: "Secondary, no spark",
      colour: "--winding",
      points: across(curve, resonances.unloaded),
    },
    {
      id: "loaded",
      label: "Secondary with the spark",
      colour: "--winding",
      dash: "7 4",
      points: across(curve, resonances.loaded),
    },
    {
      id: "lower",
      label: "Lower pole",
      colour: "--field",
      points: against(curve, (point) => point.lowerPole),
    },
    {
      id: "upper",
      label: "Upper pole",
      colour: "--field",
      points: against(curve, (point) => point.upperPole),
    },
    {
      id: "loaded-lower",
      label: "Lower pole with the spark",
      colour: "--field",
      dash: "3 3",
      points: against(curve, (point) => point.loadedLowerPole),
      shownAtFirst: false,
    },
    {
      id: "loaded-upper",
      label: "Upper pole with the spark",
      colour: "--field",
      dash: "3 3",
      points: against(curve, (point) => point.loadedUpperPole),
      shownAtFirst: false,
    },
  ];
}

function markersOf({ suggestedTap, suggestedTapBand }: TuningResult, tap: number): Marker[] {
  return [
    ...(suggestedTap === null
      ? []
      : [
          {
            id: "suggested",
            label: "Suggested tap",
            colour: "--ok",
            x: suggestedTap,
            band: suggestedTapBand ?? undefined,
          },
        ]),
    { id: "present", label: "Present tap", colour: "--tap", x: tap },
  ];
}

/** The primary's resonance against the tap, with the secondary's resonances and the poles of the coupled circuit. */
export function TuningChart() {
  const tuning = useEvaluation((evaluation) => evaluation.tuning);
  const resonances = useEvaluation(({ secondary }) => ({
    unloaded: secondary?.resonance ?? 0,
    loaded: secondary?.loadedResonance ?? 0,
  }));
  const tap = useDesign((design) => design.primary.tap);
  const system = useUnitSystem();
  if (!tuning || tuning.curve.length < 2) {
    return (
      <p className={styles.none}>
        The tuning cannot be computed because the coil has no solution; see the findings.
      </p>
    );
  }
  const { curve, targetResonance } = tuning;
  const middle = targetResonance ?? resonances.unloaded;
  const around = { from: middle * (1 - REACH), to: middle * (1 + REACH) };
  return (
    <Chart
      title="Tuning"
      x={{
        label: "tap, turns from the start",
        domain: { from: curve[0].tap, to: curve[curve.length - 1].tap },
        format: (value) => value.toFixed(Number.isInteger(value) ? 0 : 2),
      }}
      y={{
        label: "resonance",
        domain: roundedDomain(around, Y_TICKS),
        format: (value) => formatQuantity(value, "frequency", system, value % 1e4 === 0 ? 3 : 4).text,
      }}
      curves={curvesOf(curve, resonances)}
      markers={markersOf(tuning, tap)}
      onPlace={dragTap}
    />
  );
}
