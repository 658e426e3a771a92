import { useState } from "react";

/** Calls back within the render in which a value is no longer the one before, so that nothing outdated is shown. */
export function useOnChange<Value>(value: Value, onChange: () => void): void {
  const [known, setKnown] = useState(value);
  if (Object.is(known, value)) return;
  setKnown(value);
  onChange();
}
