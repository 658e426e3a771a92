import { useId } from "react";
import { Cell, type CellProps } from "./Cell";
import styles from "./Field.module.css";

interface ChoiceFieldProps extends Omit<CellProps, "id" | "children"> {
  options: readonly string[];
  value: string;
  onCommit: (value: string) => void;
  path?: string;
}

export function ChoiceField({ options, value, onCommit, path, ...cell }: ChoiceFieldProps) {
  const id = useId();
  return (
    <Cell id={id} {...cell}>
      <select
        id={id}
        data-field={path}
        className={styles.select}
        value={value}
        aria-describedby={`${id}-remarks`}
        onChange={(event) => onCommit(event.target.value)}
      >
        {options.map((option) => (
          <option key={option} value={option}>
            {option}
          </option>
        ))}
      </select>
    </Cell>
  );
}
