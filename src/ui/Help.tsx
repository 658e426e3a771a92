import styles from "./Help.module.css";
import { Icon } from "./Icon";
import { Slip } from "./Slip";
import slip from "./SlipRows.module.css";

export interface HelpText {
  what: string;
  measure: string;
  typical: string;
}

interface HelpProps {
  label: string;
  help: HelpText;
  /** the permitted span in words, where there is one */
  range?: string;
}

/** A mark beside a caption; pressed, it says what the field is, how to measure it and what is typical. */
export function Help({ label, help, range }: HelpProps) {
  return (
    <Slip
      title={label}
      name={`About ${label}`}
      className={styles.mark}
      mark={<Icon name="help" size={13} />}
      role="note"
    >
      {() => (
        <>
          <p>{help.what}</p>
          <dl className={slip.rows}>
            <dt>To measure</dt>
            <dd>{help.measure}</dd>
            <dt>Typical</dt>
            <dd>{help.typical}</dd>
            {range && <dt>Range</dt>}
            {range && <dd>{range}</dd>}
          </dl>
        </>
      )}
    </Slip>
  );
}
