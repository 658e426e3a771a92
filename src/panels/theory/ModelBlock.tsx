import type { ResultEntry } from "../../evaluation/register/entry";
import { resultEntry } from "../../evaluation/register/register";
import { sourceText } from "../../evaluation/register/sourceText";
import { Symbols } from "../../ui/Symbols";
import type { Model } from "./section";
import styles from "./Theory.module.css";

function Result({ entry }: { entry: ResultEntry }) {
  return (
    <div className={styles.result}>
      <dt>
        {entry.label}{" "}
        <var>
          <Symbols text={entry.symbol} />
        </var>
      </dt>
      <dd>
        <p className={styles.equation}>
          <Symbols text={entry.formula} />
        </p>
        <p>{entry.words}</p>
        <p className={styles.small}>
          Valid: {entry.validity} Accuracy: {entry.accuracy} Source: {sourceText(entry.source)}.
        </p>
      </dd>
    </div>
  );
}

/** Results with their register entries. */
export function ResultList({ entries }: { entries: readonly ResultEntry[] }) {
  return (
    <dl className={styles.results}>
      {entries.map((entry) => (
        <Result key={entry.id} entry={entry} />
      ))}
    </dl>
  );
}

/** One model: description, equations, sources and results. */
export function ModelBlock({ model }: { model: Model }) {
  return (
    <article className={styles.model}>
      <div className={styles.account}>
        <h3>{model.title}</h3>
        <p>{model.words}</p>
        {model.equations.map((equation) => (
          <p key={equation} className={styles.equation}>
            <Symbols text={equation} />
          </p>
        ))}
        {model.symbols && (
          <p className={styles.small}>
            <Symbols text={model.symbols} />
          </p>
        )}
        <p className={styles.small}>Source: {sourceText(model.source)}.</p>
      </div>
      {model.results.length > 0 && <ResultList entries={model.results.map(resultEntry)} />}
    </article>
  );
}
