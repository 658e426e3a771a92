import { useRef } from "react";

/** A value that stands still while a gesture runs, so that the drawing does not run from under the hand. */
export function useHeld<Value>(value: Value, held: boolean): Value {
  const kept = useRef(value);
  if (!held) kept.current = value;
  return kept.current;
}
