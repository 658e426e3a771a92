import type { InputHTMLAttributes } from "react";
import { dropDraft, putDraft, useDraft } from "./drafts";

interface TextFieldProps
  extends Omit<InputHTMLAttributes<HTMLInputElement>, "value" | "onChange" | "onBlur" | "onKeyDown"> {
  label: string;
  value: string;
  /** identifies the field among all others; key of its draft */
  place: string;
  onCommit: (value: string) => void;
}

/**
 * A line of free text, committed on Enter and on leaving the field. While the user types, the browser's
 * own undo works within it; Escape, or an empty line, restores the old text.
 */
export function TextField({ label, value, place, onCommit, ...input }: TextFieldProps) {
  const write = (text: string) => {
    if (text === value) dropDraft(place);
    else putDraft(place, { label, text, over: value, kept: `“${value}”`, error: null });
  };
  const take = (text: string) => {
    dropDraft(place);
    const next = text.trim();
    if (next && next !== value) onCommit(next);
  };
  const draft = useDraft(place, value, take);
  return (
    <input
      {...input}
      aria-label={label}
      spellCheck={false}
      data-own-undo
      data-draft={draft ? place : undefined}
      value={draft?.text ?? value}
      onChange={(event) => write(event.target.value)}
      onBlur={() => draft && take(draft.text)}
      onKeyDown={(event) => {
        if (event.nativeEvent.isComposing) return;
        if (event.key === "Enter" && draft) take(draft.text);
        if (event.key === "Escape") dropDraft(place);
      }}
    />
  );
}
