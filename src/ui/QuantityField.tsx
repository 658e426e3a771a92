import { type ClipboardEvent, type KeyboardEvent, useId, useState } from "react";
import type { Dimension } from "../units/dimension";
import { formatIn } from "../units/format";
import { parseQuantity } from "../units/parse";
import { fieldUnit } from "../units/quantities";
import type { UnitSystem } from "../units/unitSystem";
import { Button } from "./Button";
import { Cell, type CellProps, type Remark } from "./Cell";
import { type DraftError, dropDraft, putDraft, useDraft } from "./drafts";
import styles from "./Field.module.css";
import { Icon } from "./Icon";
import { arrowStep, stepped } from "./step";

interface QuantityFieldProps extends Omit<CellProps, "id" | "children"> {
  /** SI; null if a nullable field is empty */
  value: number | null;
  /** SI, of an arrow key; without one it follows from the number's size */
  step?: number | null;
  /** SI, a usual value: its unit is the one the field shows and assumes for bare numbers; null if there is none */
  usual: number | null;
  dimension: Dimension;
  system: UnitSystem;
  /** identifies the field among all fields of all designs; key of its draft */
  place: string;
  /** `run` is the field's place if an arrow key changed the value: steps of one run are undone together */
  onCommit: (value: number | null, run?: string) => void;
  /** the error message for an invalid value, null for a valid one */
  refuse?: (value: number) => string | null;
  nullable?: boolean;
  whole?: boolean;
  path?: string;
}

const restingDigits = 7;
const fullDigits = 12;

/**
 * A number with its unit. Enter or leaving the field commits the text; text that cannot be read stays
 * in the field with an error message; focus alone changes nothing.
 */
export function QuantityField(props: QuantityFieldProps) {
  const {
    value,
    usual,
    step = null,
    dimension,
    system,
    place,
    onCommit,
    refuse,
    nullable = false,
    whole = false,
    path,
    ...cell
  } = props;
  const id = useId();
  const [focused, setFocused] = useState(false);
  const fixed = fieldUnit(usual, dimension, system);
  const unit = fixed.symbol;
  const inUnit = (digits: number) => (value === null ? "" : formatIn(fixed, value, dimension, digits).number);
  const [full, resting] = [inUnit(fullDigits), inUnit(restingDigits)];

  const write = (text: string, error: DraftError | null = null) => {
    const kept = value === null ? "none" : `${resting} ${unit}`.trim();
    putDraft(place, { label: cell.label, text, over: value, kept, error });
  };

  const take = (next: number | null, run?: string) => {
    dropDraft(place);
    if (next !== value) onCommit(next, run);
  };

  const commit = (text: string, run?: string) => {
    if (text === full) return dropDraft(place);
    if (text.trim() === "" && nullable) return take(null);
    const read = parseQuantity(text, dimension, system, unit);
    const refusal = read.ok ? refuse?.(read.value) : read.message;
    if (read.ok && !refusal) return take(read.value, run);
    write(text, { sentence: refusal ?? "", choices: read.ok ? [] : (read.choices ?? []) });
  };

  const draft = useDraft(place, value, commit);

  const stepBy = (steps: number) => {
    const now = Number(draft?.text ?? full);
    const size = step === null ? arrowStep(now, whole) : step / fixed.factor;
    if (Number.isFinite(now)) commit(stepped(now, steps * size), place);
  };

  const onKeyDown = (event: KeyboardEvent) => {
    // keys that compose a character belong to the input method
    if (event.nativeEvent.isComposing) return;
    if (event.key === "Enter") {
      if (draft) commit(draft.text);
    } else if (event.key === "Escape" && draft) dropDraft(place);
    else if (event.key === "ArrowUp") stepBy(event.shiftKey ? 10 : 1);
    else if (event.key === "ArrowDown") stepBy(event.shiftKey ? -10 : -1);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  const error = draft?.error ?? null;
  const remarks: Remark[] = error
    ? [{ severity: "error", sentence: error.sentence }, ...(cell.remarks ?? [])]
    : [...(cell.remarks ?? [])];

  return (
    <Cell
      id={id}
      {...cell}
      remarks={remarks}
      actions={error && <Choices of={error.choices} onChoose={commit} />}
    >
      <div className={styles.entry}>
        <input
          id={id}
          data-field={path}
          data-draft={draft ? place : undefined}
          className={styles.input}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          placeholder={nullable ? "none" : undefined}
          aria-invalid={error !== null}
          aria-describedby={`${id}-unit ${id}-remarks`}
          value={draft?.text ?? (focused ? full : resting)}
          onFocus={() => setFocused(true)}
          onChange={(event) => (event.target.value === full ? dropDraft(place) : write(event.target.value))}
          onPaste={(event) => pasteInOneLine(event, write)}
          onBlur={() => {
            setFocused(false);
            if (draft) commit(draft.text);
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

/** Some browsers join pasted lines, which would turn two numbers into one. */
function pasteInOneLine(event: ClipboardEvent<HTMLInputElement>, write: (text: string) => void) {
  const text = event.clipboardData.getData("text").trim();
  if (!/[\r\n]/.test(text)) return;
  event.preventDefault();
  const { value, selectionStart, selectionEnd } = event.currentTarget;
  write(value.slice(0, selectionStart ?? 0) + text.replace(/\s+/g, " ") + value.slice(selectionEnd ?? 0));
}
