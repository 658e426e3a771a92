import { useId } from "react";
import { Cell, type CellProps } from "./Cell";
import styles from "./Field.module.css";

interface SwitchFieldProps extends Omit<CellProps, "id" | "children"> {
  value: boolean;
  onCommit: (value: boolean) => void;
  path?: string;
}

/** A switch with its state in words beside it. */
export function SwitchField({ value, onCommit, path, ...cell }: SwitchFieldProps) {
  const id = useId();
  return (
    <Cell id={id} {...cell}>
      <span className={styles.switch}>
        <input
          id={id}
          type="checkbox"
          role="switch"
          data-field={path}
          checked={value}
          aria-checked={value}
          aria-describedby={`${id}-remarks`}
          onChange={(event) => onCommit(event.target.checked)}
        />
        <span aria-hidden="true">{value ? "on" : "off"}</span>
      </span>
    </Cell>
  );
}
