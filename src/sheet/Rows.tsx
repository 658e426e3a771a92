import { numberAt } from "../design/changeAt";
import { resultEntry, resultValue } from "../evaluation/register/register";
import { numberField } from "../fields/allFields";
import { formatQuantity } from "../units/format";
import { useDesign, useEvaluation, useUnitSystem } from "../workbench/session/hooks";
import styles from "./BuildSheet.module.css";

interface RowProps {
  label: string;
  text: string;
}

/** A label and its value. */
export function Row({ label, text }: RowProps) {
  return (
    <div className={styles.row}>
      <dt>{label}</dt>
      <dd>{text}</dd>
    </div>
  );
}

/** A field of the design, with the label of its declaration. */
export function FieldRow({ path }: { path: string }) {
  const field = numberField(path);
  const system = useUnitSystem();
  const value = useDesign((design) => numberAt(design, path));
  return <Row label={field.label} text={formatQuantity(value, field.dimension, system).text} />;
}

/** A result, with the label of its register entry unless another is given. */
export function ResultRow({ id, label }: { id: string; label?: string }) {
  const entry = resultEntry(id);
  const system = useUnitSystem();
  const value = useEvaluation((evaluation) => resultValue(evaluation, id));
  return <Row label={label ?? entry.label} text={formatQuantity(value, entry.dimension, system).text} />;
}
