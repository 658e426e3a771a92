import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import type { Dimension } from "../units/dimension";
import { formatIn } from "../units/format";
import { parseQuantity } from "../units/parse";
import { fieldUnit } from "../units/quantities";
import type { UnitSystem } from "../units/unitSystem";
import { Button } from "./Button";
import { Cell, type CellProps, type Remark } from "./Cell";
import styles from "./Field.module.css";
import { Icon } from "./Icon";
import { arrowStep, stepped } from "./step";
import { useOnChange } from "./useOnChange";

interface QuantityFieldProps extends Omit<CellProps, "id" | "children"> {
  /** SI; null where a nullable field is empty */
  value: number | null;
  /** SI, a usual value: the field shows and reads bare numbers in its unit; null where there is none */
  usual: number | null;
  dimension: Dimension;
  system: UnitSystem;
  onCommit: (value: number | null) => void;
  /** a sentence where the value has no meaning, null where it has one */
  refuse?: (value: number) => string | null;
  nullable?: boolean;
  whole?: boolean;
  path?: string;
}

/** Why what was typed is not taken over; it stays in the field until it is mended. */
interface Trouble {
  sentence: string;
  choices: readonly string[];
}

const restingDigits = 7;
const fullDigits = 12;

/**
 * A number with its unit. Enter or leaving commits what was typed; what cannot be read stays in the
 * field with a sentence; looking in and leaving changes nothing.
 */
export function QuantityField(props: QuantityFieldProps) {
  const {
    value,
    usual,
    dimension,
    system,
    onCommit,
    refuse,
    nullable = false,
    whole = false,
    path,
    ...cell
  } = props;
  const id = useId();
  const [focused, setFocused] = useState(false);
  const [draft, setDraft] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const fixed = fieldUnit(usual, dimension, system);
  const unit = fixed.symbol;
  const inUnit = (digits: number) => (value === null ? "" : formatIn(fixed, value, dimension, digits).number);
  const [full, resting] = [inUnit(fullDigits), inUnit(restingDigits)];

  const dropDraft = () => {
    setDraft(null);
    setTrouble(null);
  };
  // a value changed from elsewhere outdates the draft
  useOnChange(value, dropDraft);

  const take = (next: number | null) => {
    dropDraft();
    if (next !== value) onCommit(next);
  };

  const commit = (text: string | null) => {
    if (text === null || text === full) return dropDraft();
    if (text.trim() === "" && nullable) return take(null);
    const read = parseQuantity(text, dimension, system, unit);
    const refusal = read.ok ? refuse?.(read.value) : read.message;
    if (read.ok && !refusal) return take(read.value);
    setDraft(text);
    setTrouble({ sentence: refusal ?? "", choices: read.ok ? [] : (read.choices ?? []) });
  };

  const step = (steps: number) => {
    const now = Number(draft ?? full);
    if (Number.isFinite(now)) commit(stepped(now, steps * arrowStep(now, whole)));
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Enter") commit(draft);
    else if (event.key === "Escape" && draft !== null) dropDraft();
    else if (event.key === "ArrowUp") step(event.shiftKey ? 10 : 1);
    else if (event.key === "ArrowDown") step(event.shiftKey ? -10 : -1);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  const input = useFocusedWheel(step);
  const remarks: Remark[] = trouble
    ? [{ severity: "error", sentence: trouble.sentence }, ...(cell.remarks ?? [])]
    : [...(cell.remarks ?? [])];

  return (
    <Cell
      id={id}
      {...cell}
      remarks={remarks}
      ways={trouble && <Choices of={trouble.choices} onChoose={commit} />}
    >
      <div className={styles.entry}>
        <input
          ref={input}
          id={id}
          data-field={path}
          data-draft={draft !== null || undefined}
          className={styles.input}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          placeholder={nullable ? "none" : undefined}
          aria-invalid={trouble !== null}
          aria-describedby={`${id}-unit ${id}-remarks`}
          value={draft ?? (focused ? full : resting)}
          onFocus={() => setFocused(true)}
          onChange={(event) => setDraft(event.target.value)}
          onBlur={() => {
            setFocused(false);
            commit(draft);
          }}
          onKeyDown={onKeyDown}
        />
        <span id={`${id}-unit`} className={styles.unit}>
          {unit}
        </span>
        {nullable && value !== null && (
          <button
            type="button"
            className={styles.clear}
            aria-label={`Clear ${cell.label}`}
            onClick={() => take(null)}
          >
            <Icon name="close" size={11} />
          </button>
        )}
      </div>
    </Cell>
  );
}

function Choices({ of, onChoose }: { of: readonly string[]; onChoose: (text: string) => void }) {
  if (of.length === 0) return null;
  return (
    <div className={styles.choices}>
      {of.map((choice) => (
        <Button key={choice} onClick={() => onChoose(choice)}>
          {choice}
        </Button>
      ))}
    </div>
  );
}

/** The wheel steps the field that has the focus and never any other; React's own listener cannot hold the page still. */
function useFocusedWheel(step: (steps: number) => void) {
  const input = useRef<HTMLInputElement>(null);
  const latest = useRef(step);
  latest.current = step;
  useEffect(() => {
    const element = input.current;
    const onWheel = (event: WheelEvent) => {
      if (document.activeElement !== element) return;
      event.preventDefault();
      latest.current(event.deltaY < 0 ? 1 : -1);
    };
    element?.addEventListener("wheel", onWheel, { passive: false });
    return () => element?.removeEventListener("wheel", onWheel);
  }, []);
  return input;
}
