import styles from "./Help.module.css";
import { Icon } from "./Icon";
import { Popover } from "./Popover";
import popover from "./PopoverRows.module.css";

export interface HelpText {
  what: string;
  measure: string;
  typical: string;
}

interface HelpProps {
  label: string;
  help: HelpText;
  /** the permitted range in words, if there is one */
  range?: string;
}

/** A button beside a caption that opens the field's help: what it is, how to measure it, typical values. */
export function Help({ label, help, range }: HelpProps) {
  return (
    <Popover
      title={label}
      name={`About ${label}`}
      className={styles.mark}
      mark={<Icon name="help" size={13} />}
      role="note"
    >
      {() => (
        <>
          <p>{help.what}</p>
          <dl className={popover.rows}>
            <dt>To measure</dt>
            <dd>{help.measure}</dd>
            <dt>Typical</dt>
            <dd>{help.typical}</dd>
            {range && <dt>Range</dt>}
            {range && <dd>{range}</dd>}
          </dl>
        </>
      )}
    </Popover>
  );
}
