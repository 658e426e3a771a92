import type { ComparedRow } from "./comparedRows";
import styles from "./Versions.module.css";

/** The fields that differ, with their values in the version and now. */
export function ComparedTable({ rows, caption }: { rows: readonly ComparedRow[]; caption: string }) {
  return (
    <div className={styles.scroll}>
      <table className={styles.compared}>
        <caption className="visually-hidden">{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Field</th>
            <th scope="col">In this version</th>
            <th scope="col">Now</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, section, label, old, present }) => (
            <tr key={key}>
              <th scope="row">
                {section && <span className={styles.section}>{section}</span>}
                {label}
              </th>
              <td>{old}</td>
              <td>{present}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
