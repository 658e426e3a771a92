import { useState } from "react";

export interface Round {
  /** one higher each time that it is asked for once more */
  round: number;
  /** whether the present question was given up */
  givenUp: boolean;
  giveUp(): void;
  again(): void;
}

/** Of a computation that follows a key: whether it was given up for this key, and the way to have it once more. */
export function useRound(key: string, cancel: () => void): Round {
  const [round, setRound] = useState(0);
  const [given, setGiven] = useState<string | null>(null);
  return {
    round,
    givenUp: given === key,
    giveUp() {
      cancel();
      setGiven(key);
    },
    again() {
      setGiven(null);
      setRound(round + 1);
    },
  };
}
