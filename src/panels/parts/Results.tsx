import { useContext } from "react";
import { PanelOpen } from "./PanelOpen";
import { ResultFigure } from "./ResultFigure";
import styles from "./Results.module.css";

/** The key results below a panel's fields, by their ids in the register; nothing while the panel is closed. */
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
