import { useContext } from "react";
import { PanelOpen } from "./PanelOpen";
import { ResultFigure } from "./ResultFigure";
import styles from "./Results.module.css";

/** What a panel's fields come to: the key results beneath them, by their ids in the register; none while it is closed. */
export function Results({ ids }: { ids: readonly string[] }) {
  if (!useContext(PanelOpen)) return null;
  return (
    <dl className={styles.results}>
      {ids.map((id) => (
        <ResultFigure key={id} id={id} />
      ))}
    </dl>
  );
}
