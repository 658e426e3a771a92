import type { ResponseResult } from "../calc/circuit/response";
import type { ResponseSample as ResponsePoint } from "../calc/circuit/responseCurve";
import type { Dimension } from "../units/dimension";
import { formatQuantity } from "../units/format";
import { useEvaluation, useUnitSystem } from "../workbench/session/hooks";
import { type Domain, innerDomain, logDomain } from "./axis";
import { Chart } from "./Chart";
import styles from "./Chart.module.css";
import type { Curve, Marker } from "./curve";

type Value = (point: ResponsePoint) => number;

/** Steps to which the frequency axis is rounded. */
const X_STEPS = 12;

/** degrees, the range of a passive network's phase */
const QUARTER_TURN: Domain = { from: -90, to: 90 };

interface ResponsePlot {
  title: string;
  label: string;
  colour: string;
  dimension: Dimension;
  value: Value;
  /** null for a log axis that fits the values */
  domain: Domain | null;
}

const PLOTS: readonly ResponsePlot[] = [
  {
    title: "Top voltage",
    label: "volts per volt at the bridge",
    colour: "--field",
    dimension: "ratio",
    value: (point) => point.topVoltagePerVolt,
    domain: null,
  },
  {
    title: "Input impedance",
    label: "magnitude at the bridge",
    colour: "--copper",
    dimension: "resistance",
    value: (point) => point.inputImpedance.magnitude,
    domain: null,
  },
  {
    title: "Phase",
    label: "of the input impedance; the bridge can lock at its zeros",
    colour: "--copper",
    dimension: "degrees",
    value: (point) => (point.inputImpedance.phase * 180) / Math.PI,
    domain: QUARTER_TURN,
  },
  {
    title: "Bridge current",
    label: "amperes per volt at the bridge",
    colour: "--winding",
    dimension: "ratio",
    value: (point) => 1 / point.inputImpedance.magnitude,
    domain: null,
  },
];

function points(curve: readonly ResponsePoint[], value: Value): { x: number; y: number }[] {
  return curve.map((point) => ({ x: point.frequency, y: value(point) }));
}

function domainOf(curves: readonly Curve[]): Domain {
  return logDomain(curves.flatMap((curve) => curve.points.map((point) => point.y)));
}

/** The pole on which the burst runs, with the spark; empty until the burst is computed. */
function runningMarker(
  pole: "lower" | "upper" | null,
  { loadedLowerPole, loadedUpperPole }: ResponseResult,
  format: (frequency: number) => string,
): Marker[] {
  if (!pole) return [];
  const x = pole === "lower" ? loadedLowerPole : loadedUpperPole;
  return [
    {
      id: "running",
      label: `The burst runs on the ${pole} pole: ${format(x)} with the spark`,
      colour: "--live",
      x,
    },
  ];
}

/** Input impedance and voltage gain against frequency, with and without the spark. */
export function ResponseChart() {
  const response = useEvaluation((evaluation) => evaluation.response);
  const runningPole = useEvaluation(({ burst }) => burst?.runningPole ?? null);
  const system = useUnitSystem();
  if (!response) {
    return (
      <p className={styles.none}>
        The response cannot be computed because the coupled circuit has no solution; see the findings.
      </p>
    );
  }
  const { curve, loadedCurve } = response;
  const pair = (value: Value, colour: string): Curve[] => [
    { id: "unloaded", label: "No spark", colour, points: points(curve, value) },
    { id: "loaded", label: "With the spark", colour, dash: "7 4", points: points(loadedCurve, value) },
  ];
  const frequency = (value: number): string => formatQuantity(value, "frequency", system, 4).text;
  const x = {
    label: "frequency",
    domain: innerDomain({ from: curve[0].frequency, to: curve[curve.length - 1].frequency }, X_STEPS),
    format: frequency,
  };
  const markers: Marker[] = [
    {
      id: "lower",
      label: `Lower pole ${frequency(response.lowerPole)}`,
      colour: "--ink-faint",
      x: response.lowerPole,
    },
    {
      id: "upper",
      label: `Upper pole ${frequency(response.upperPole)}`,
      colour: "--ink-faint",
      x: response.upperPole,
    },
    ...runningMarker(runningPole, response, frequency),
  ];
  return PLOTS.map(({ title, label, colour, dimension, value, domain }) => {
    const curves = pair(value, colour);
    return (
      <Chart
        key={title}
        title={title}
        x={x}
        y={{
          label,
          domain: domain ?? domainOf(curves),
          log: domain === null,
          format: (shown) => formatQuantity(shown, dimension, system, 3).text,
        }}
        curves={curves}
        markers={markers}
      />
    );
  });
}
