import { type ClipboardEvent, type KeyboardEvent, useId, useLayoutEffect, useRef, useState } from "react";
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

/** The texts of a value: at rest, and while its field is edited. */
function textsOf({ value, usual, dimension, system }: QuantityFieldProps) {
  const unit = fieldUnit(usual, dimension, system);
  const inUnit = (digits: number) => (value === null ? "" : formatIn(unit, value, dimension, digits).number);
  return { unit, full: inUnit(fullDigits), resting: inUnit(restingDigits) };
}

/** What is typed and not committed, and the ways to commit it. */
function useEntry(props: QuantityFieldProps) {
  const { value, dimension, system, place, label, onCommit, refuse, nullable = false } = props;
  const { unit, full, resting } = textsOf(props);
  const write = (text: string, error: DraftError | null = null) => {
    if (text === full && error === null) return dropDraft(place);
    const kept = value === null ? "none" : `${resting} ${unit.symbol}`.trim();
    putDraft(place, { label, text, over: value, kept, error });
  };
  const take = (next: number | null, run?: string) => {
    dropDraft(place);
    if (next !== value) onCommit(next, run);
  };
  const commit = (text: string, run?: string) => {
    if (text === full) return dropDraft(place);
    if (text.trim() === "" && nullable) return take(null);
    const read = parseQuantity(text, dimension, system, unit.symbol);
    const refusal = read.ok ? refuse?.(read.value) : read.message;
    if (read.ok && !refusal) return take(read.value, run);
    write(text, { sentence: refusal ?? "", choices: read.ok ? [] : (read.choices ?? []) });
  };
  return { unit, full, resting, write, take, commit, draft: useDraft(place, value, commit) };
}

type Entry = ReturnType<typeof useEntry>;

/** Enter commits, Escape gives up, the arrows step; every other key is the text's. */
function keysOf({ place, step = null, whole = false }: QuantityFieldProps, entry: Entry) {
  const { draft, full, unit, commit } = entry;
  const stepBy = (steps: number) => {
    const now = Number(draft?.text ?? full);
    const size = step === null ? arrowStep(now, whole) : step / unit.factor;
    if (Number.isFinite(now)) commit(stepped(now, steps * size), place);
  };
  return (event: KeyboardEvent) => {
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
}

interface EntryInputProps {
  id: string;
  field: QuantityFieldProps;
  entry: Entry;
}

/** Where the text changes with the focus, a browser drops the selection that Tab brings: it is made again. */
function useSelectionByKey(focused: boolean) {
  const input = useRef<HTMLInputElement>(null);
  const isPressed = useRef(false);
  useLayoutEffect(() => {
    if (focused && !isPressed.current) input.current?.select();
    isPressed.current = false;
  }, [focused]);
  return { ref: input, onPointerDown: () => (isPressed.current = !focused) };
}

function EntryInput({ id, field, entry }: EntryInputProps) {
  const [focused, setFocused] = useState(false);
  const selection = useSelectionByKey(focused);
  const { draft, full, resting, write, commit } = entry;
  return (
    <input
      {...selection}
      id={id}
      data-field={field.path}
      data-draft={draft ? field.place : undefined}
      className={styles.input}
      type="text"
      inputMode="decimal"
      autoComplete="off"
      spellCheck={false}
      placeholder={field.nullable ? "none" : undefined}
      aria-invalid={Boolean(draft?.error)}
      aria-describedby={`${id}-unit ${id}-remarks`}
      value={draft?.text ?? (focused ? full : resting)}
      onFocus={() => setFocused(true)}
      onChange={(event) => write(event.target.value)}
      onPaste={(event) => pasteInOneLine(event, write)}
      onBlur={() => {
        setFocused(false);
        if (draft) commit(draft.text);
      }}
      onKeyDown={keysOf(field, entry)}
    />
  );
}

function remarksOf(error: DraftError | null, remarks: readonly Remark[] = []): Remark[] {
  return error ? [{ severity: "error", sentence: error.sentence }, ...remarks] : [...remarks];
}

/**
 * A number with its unit. Enter or leaving the field commits the text; text that cannot be read stays
 * in the field with an error message; focus alone changes nothing.
 */
export function QuantityField(field: QuantityFieldProps) {
  const { value, label, nullable } = field;
  const id = useId();
  const entry = useEntry(field);
  const error = entry.draft?.error ?? null;
  return (
    <Cell
      id={id}
      label={label}
      help={field.help}
      range={field.range}
      wide={field.wide}
      remarks={remarksOf(error, field.remarks)}
      actions={error && <Choices of={error.choices} onChoose={entry.commit} />}
    >
      <div className={styles.entry}>
        <EntryInput id={id} field={field} entry={entry} />
        <span id={`${id}-unit`} className={styles.unit}>
          {entry.unit.symbol}
        </span>
        {nullable && value !== null && (
          <button
            type="button"
            className={styles.clear}
            aria-label={`Clear ${label}`}
            onClick={() => entry.take(null)}
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
