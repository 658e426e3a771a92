import { deviationText, scientific, shareOfTolerance } from "./figures";
import type { ReferenceRow } from "./referenceRow";
import styles from "./Theory.module.css";

/** The summary of a group: the number of values, and the deviation closest to its tolerance. */
function Summary({ name, rows }: { name: string; rows: readonly ReferenceRow[] }) {
  const most = rows.reduce((worst, row) => (shareOfTolerance(row) > shareOfTolerance(worst) ? row : worst));
  return (
    <summary className={styles.groupHead}>
      <span className={styles.groupName}>{name}</span>
      <span className={styles.groupFacts}>
        {rows.length} values, closest to its tolerance: {deviationText(most.deviation, most)} of{" "}
        {deviationText(most.tolerance, most)}
      </span>
    </summary>
  );
}

function Row({ row }: { row: ReferenceRow }) {
  const unit = row.unit && <span className={styles.unit}> {row.unit}</span>;
  return (
    <tr>
      <th scope="row">{row.name}</th>
      <td className={styles.figure}>
        {scientific(row.reference, 6)}
        {unit}
      </td>
      <td className={styles.figure}>
        {scientific(row.computed, 6)}
        {unit}
      </td>
      <td className={styles.figure}>{deviationText(row.deviation, row)}</td>
      <td className={styles.figure}>{deviationText(row.tolerance, row)}</td>
    </tr>
  );
}

/** The rows of one source, with the source once above them. */
function SourceRows({ source, rows }: { source: string; rows: readonly ReferenceRow[] }) {
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={5} className={styles.rowsSource}>
          <span>{source}</span>
        </th>
      </tr>
      {rows.map((row) => (
        <Row key={row.id} row={row} />
      ))}
    </tbody>
  );
}

/** One group of the reference table, opened on demand. */
export function ReferenceGroup({ name, rows }: { name: string; rows: readonly ReferenceRow[] }) {
  const sources = [...new Set(rows.map(({ source }) => source))];
  return (
    <details className={styles.group}>
      <Summary name={name} rows={rows} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by keys */}
      <section className={styles.scroll} tabIndex={0} aria-label={`${name}: values`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Quantity</th>
              <th scope="col">Reference</th>
              <th scope="col">Computed</th>
              <th scope="col">Deviation</th>
              <th scope="col">Tolerance</th>
            </tr>
          </thead>
          {sources.map((source) => (
            <SourceRows key={source} source={source} rows={rows.filter((row) => row.source === source)} />
          ))}
        </table>
      </section>
    </details>
  );
}
