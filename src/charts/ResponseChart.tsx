import type { ResponsePoint } from "../evaluation/evaluation";
import { formatQuantity } from "../units/format";
import { useEvaluation, useUnitSystem } from "../workbench/hooks";
import { type Domain, innerDomain, logDomain } from "./axis";
import { Chart } from "./Chart";
import styles from "./Chart.module.css";
import type { Curve, Marker } from "./curve";

type Value = (point: ResponsePoint) => number;

const gain: Value = (point) => point.topVoltagePerVolt;
const impedance: Value = (point) => point.inputImpedance.magnitude;
const phaseDegrees: Value = (point) => (point.inputImpedance.phase * 180) / Math.PI;
const current: Value = (point) => 1 / point.inputImpedance.magnitude;

/** Steps that the frequency axis is rounded to. */
const X_STEPS = 12;

/** degrees, a passive network's phase stays within it */
const QUARTER_TURN = { from: -90, to: 90 };

function points(curve: readonly ResponsePoint[], value: Value): { x: number; y: number }[] {
  return curve.map((point) => ({ x: point.frequency, y: value(point) }));
}

function domainOf(curves: readonly Curve[]): Domain {
  return logDomain(curves.flatMap((curve) => curve.points.map((point) => point.y)));
}

/** What the bridge sees and what comes out at the top, against frequency, with and without the spark. */
export function ResponseChart() {
  const response = useEvaluation((evaluation) => evaluation.response);
  const system = useUnitSystem();
  if (!response) {
    return (
      <p className={styles.none}>The response cannot be drawn while the coupled circuit has no solution.</p>
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
  ];
  const gains = pair(gain, "--field");
  const impedances = pair(impedance, "--copper");
  const currents = pair(current, "--winding");
  return (
    <>
      <Chart
        title="Top voltage"
        x={x}
        y={{
          label: "volts per volt at the bridge",
          domain: domainOf(gains),
          log: true,
          format: (value) => formatQuantity(value, "ratio", system, 3).text,
        }}
        curves={gains}
        markers={markers}
      />
      <Chart
        title="Input impedance"
        x={x}
        y={{
          label: "magnitude at the bridge",
          domain: domainOf(impedances),
          log: true,
          format: (value) => formatQuantity(value, "resistance", system, 3).text,
        }}
        curves={impedances}
        markers={markers}
      />
      <Chart
        title="Phase"
        x={x}
        y={{
          label: "of the input impedance; a bridge can lock where it is zero",
          domain: QUARTER_TURN,
          format: (value) => formatQuantity(Math.round(value), "degrees", system, 3).text,
        }}
        curves={pair(phaseDegrees, "--copper")}
        markers={markers}
      />
      <Chart
        title="Bridge current"
        x={x}
        y={{
          label: "amperes per volt at the bridge",
          domain: domainOf(currents),
          log: true,
          format: (value) => formatQuantity(value, "ratio", system, 3).text,
        }}
        curves={currents}
        markers={markers}
      />
    </>
  );
}
