import { ResultFigure } from "./ResultFigure";
import styles from "./Results.module.css";

/** What a panel's fields come to: the key results beneath them, by their ids in the register. */
export function Results({ ids }: { ids: readonly string[] }) {
  return (
    <dl className={styles.results}>
      {ids.map((id) => (
        <ResultFigure key={id} id={id} />
      ))}
    </dl>
  );
}
