import { useContext } from "react";
import type { ResultEntry } from "../../evaluation/register/entry";
import { sourceText } from "../../evaluation/register/sourceText";
import popover from "../../ui/PopoverRows.module.css";
import { Symbols } from "../../ui/Symbols";
import { useDesign, useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import { GoToField } from "./GoToField";
import styles from "./Provenance.module.css";
import { provenanceInput } from "./provenanceInput";

interface ProvenanceProps {
  entry: ResultEntry;
  close: () => void;
}

/** How a result is computed: formula in words and symbols, inputs, source, validity and accuracy. */
export function Provenance({ entry, close }: ProvenanceProps) {
  return (
    <>
      <p>{entry.words}</p>
      <p className={styles.formula}>
        <Symbols text={entry.formula} />
      </p>
      <dl className={popover.rows}>
        <dt>Inputs</dt>
        <dd>
          <Inputs ids={entry.inputs} close={close} />
        </dd>
        <dt>Source</dt>
        <dd>{sourceText(entry.source)}</dd>
        <dt>Validity</dt>
        <dd>{entry.validity}</dd>
        <dt>Accuracy</dt>
        <dd>{entry.accuracy}</dd>
      </dl>
    </>
  );
}

function Inputs({ ids, close }: { ids: readonly string[]; close: () => void }) {
  const design = useDesign((present) => present);
  const evaluation = useEvaluation((present) => present);
  const system = useUnitSystem();
  const goToField = useContext(GoToField);
  const go = (path: string) => {
    close();
    goToField(path);
  };
  return (
    <ul className={styles.inputs}>
      {ids.map((id) => {
        const { label, value, field } = provenanceInput(id, design, evaluation, system);
        return (
          <li key={id}>
            {field === null ? (
              label
            ) : (
              <button type="button" className={styles.go} onClick={() => go(field)}>
                {label}
              </button>
            )}
            {value !== null && `: ${value}`}
          </li>
        );
      })}
    </ul>
  );
}
