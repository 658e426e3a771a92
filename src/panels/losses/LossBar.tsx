import { resultEntry, resultValue } from "../../evaluation/register/register";
import { formatQuantity } from "../../units/format";
import { useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import styles from "./LossBars.module.css";

interface LossBarPart {
  /** name of the part in `losses.<circuit>` */
  name: string;
  hatch: "solid" | "rising" | "crossed" | "open";
}

interface LossBarProps {
  circuit: "secondary" | "primary";
  parts: readonly LossBarPart[];
}

const CAPTION = { secondary: "Secondary", primary: "Primary" };

/** One circuit's losses as a stacked bar, with name, resistance and share of each part below. */
export function LossBar({ circuit, parts }: LossBarProps) {
  const system = useUnitSystem();
  const losses = useEvaluation((evaluation) => evaluation.losses);
  const value = (id: string) => resultValue({ losses }, `losses.${circuit}.${id}`);
  const ohms = (id: string) => formatQuantity(value(id), "resistance", system).text;
  const shown = parts.filter(({ name }) => (value(`${name}.resistance`) ?? 0) !== 0);
  return (
    <div className={styles.circuit} data-circuit={circuit}>
      <h4 className={styles.caption}>
        {CAPTION[circuit]} <b className={styles.figure}>{ohms("total")}</b>
      </h4>
      <div className={styles.bar} aria-hidden="true">
        {shown.map(({ name, hatch }) => (
          <span
            key={name}
            className={styles[hatch]}
            style={{ flexGrow: Math.max(0, value(`${name}.share`) ?? 0) }}
          />
        ))}
      </div>
      <dl className={styles.parts}>
        {shown.map(({ name, hatch }) => {
          const entry = resultEntry(`losses.${circuit}.${name}.resistance`);
          return (
            <div key={name} className={styles.part} title={entry.words}>
              <dt>
                <span className={`${styles.key} ${styles[hatch]}`} aria-hidden="true" />
                {entry.label}
              </dt>
              <dd className={styles.figure}>{ohms(`${name}.resistance`)}</dd>
              <dd className={styles.figure}>
                {formatQuantity(value(`${name}.share`), "percent", system, 3).text}
              </dd>
            </div>
          );
        })}
      </dl>
    </div>
  );
}
