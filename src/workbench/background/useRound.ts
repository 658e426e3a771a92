import { useState } from "react";

export interface Round {
  /** increased each time the computation is repeated */
  round: number;
  /** whether the computation of the present key was cancelled */
  cancelled: boolean;
  cancel(): void;
  again(): void;
}

/** For a computation that follows a key: whether it was cancelled for this key, and how to repeat it. */
export function useRound(key: string, cancelRun: () => void): Round {
  const [round, setRound] = useState(0);
  const [cancelledKey, setCancelledKey] = useState<string | null>(null);
  return {
    round,
    cancelled: cancelledKey === key,
    cancel() {
      cancelRun();
      setCancelledKey(key);
    },
    again() {
      setCancelledKey(null);
      setRound(round + 1);
    },
  };
}
