import { WORKS, type Work } from "../../calc/sources";
import { workText } from "../../evaluation/register/sourceText";
import styles from "./Theory.module.css";

/** How a work is known; two short words stay on one line. */
function knowledge(work: Work): string {
  return work.known === "partly read" ? `partly read: ${work.read}` : work.known.replace(" ", "\u00a0");
}

/** Every work cited in docstrings, results and models, and how it is known. */
export function Works() {
  return (
    <ul className={styles.works}>
      {Object.values<Work>(WORKS).map((work) => (
        <li key={workText(work)}>
          {workText(work)} <span className={styles.small}>({knowledge(work)})</span>
        </li>
      ))}
    </ul>
  );
}
