import { useRef } from "react";

/** A value that is frozen during a gesture, so that the drawing does not shift under the pointer. */
export function useHeld<Value>(value: Value, held: boolean): Value {
  const kept = useRef(value);
  if (!held) kept.current = value;
  return kept.current;
}
