import styles from "./Chart.module.css";
import { type Curve, valueAtX } from "./curve";

interface DataTableProps {
  caption: string;
  xLabel: string;
  xs: readonly number[];
  curves: readonly Curve[];
  formatX: (value: number) => string;
  formatY: (value: number) => string;
}

/** The curves as a table, for those who do not see the chart. */
export function DataTable({ caption, xLabel, xs, curves, formatX, formatY }: DataTableProps) {
  return (
    <div className={styles.table}>
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
    </div>
  );
}
