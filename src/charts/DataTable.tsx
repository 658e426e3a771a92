import { useEffect, useMemo, useState } from "react";
import styles from "./Chart.module.css";
import { type Curve, valueAtX } from "./curve";

/**
 * A value as it was when it last stood still for a while, for what need not follow every frame.
 * @param pause ms
 */
function useSettled<Value>(value: Value, pause: number): Value {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(() => value), pause);
    return () => clearTimeout(timer);
  }, [value, pause]);
  return settled;
}

interface TableData {
  caption: string;
  xLabel: string;
  xs: readonly number[];
  curves: readonly Curve[];
  formatX: (value: number) => string;
  formatY: (value: number) => string;
}

/** ms; nobody reads a table that changes with every frame */
const PAUSE = 250;

function Table({ caption, xLabel, xs, curves, formatX, formatY }: TableData) {
  return (
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{xLabel}</th>
          {curves.map((curve) => (
            <th scope="col" key={curve.id}>
              {curve.label}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {xs.map((x) => (
          <tr key={x}>
            <th scope="row">{formatX(x)}</th>
            {curves.map((curve) => {
              const value = valueAtX(curve, x);
              return <td key={curve.id}>{value === null ? "–" : formatY(value)}</td>;
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The curves as a table, for those who do not see the chart; made anew when they have come to rest. */
export function DataTable({ caption, xLabel, xs, curves, formatX, formatY }: TableData) {
  const present = useMemo(
    () => ({ caption, xLabel, xs, curves, formatX, formatY }),
    [caption, xLabel, xs, curves, formatX, formatY],
  );
  const settled = useSettled(present, PAUSE);
  return useMemo(
    () => (
      <div className={styles.table}>
        <Table {...settled} />
      </div>
    ),
    [settled],
  );
}
