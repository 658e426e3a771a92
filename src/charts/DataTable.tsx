import { useEffect, useMemo, useState } from "react";
import styles from "./Chart.module.css";
import { type Curve, valueAtX } from "./curve";

/**
 * The debounced value: updated once the value has not changed for the pause.
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

/** ms; a table that changes with every frame is of no use */
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

/** The curves as a table for screen readers, updated when they have stopped changing. */
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
