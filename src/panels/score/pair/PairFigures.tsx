import { PAIR_RESULTS } from "../../../evaluation/pair/pairRegister";
import type { PairResult } from "../../../evaluation/pair/pairResults";
import { resultValue } from "../../../evaluation/register/register";
import { Figure } from "../../../ui/Figure";
import { formatQuantity } from "../../../units/format";
import { useUnitSystem } from "../../../workbench/session/hooks";
import { Provenance } from "../../parts/Provenance";
import styles from "./Pair.module.css";

/** The pair's results; pressing one opens its provenance. */
export function PairFigures({ pair }: { pair: PairResult }) {
  const system = useUnitSystem();
  return (
    <dl className={styles.figures}>
      {PAIR_RESULTS.map((entry) => {
        const value = resultValue({ pair }, entry.id);
        const shown = formatQuantity(value, entry.dimension, system);
        return (
          <Figure
            key={entry.id}
            caption={entry.label}
            number={value === null ? null : shown.number}
            unit={shown.unit}
            origin={{
              title: `${entry.label}, ${entry.symbol}`,
              content: ({ open, close }) => open && <Provenance entry={entry} close={close} />,
            }}
          />
        );
      })}
    </dl>
  );
}
