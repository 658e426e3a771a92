import { useEffect, useState } from "react";

/**
 * A value as it was when it last stood still for a while, for what need not follow every frame.
 * @param pause ms
 */
export function useSettled<Value>(value: Value, pause: number): Value {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(() => value), pause);
    return () => clearTimeout(timer);
  }, [value, pause]);
  return settled;
}
