import type { Limiter } from "../../calc/music/coilLoad";

interface LimiterWords {
  /** shown on a key */
  mark: string;
  words: string;
}

/** What limits a note, as a letter and in words. */
export const LIMITER_WORDS: Record<Limiter, LimiterWords> = {
  "longest on-time": { mark: "L", words: "longest on-time" },
  "shortest gap": { mark: "G", words: "shortest gap" },
  duty: { mark: "D", words: "duty" },
  "over-current limit": { mark: "O", words: "over-current limit" },
  "bank voltage": { mark: "V", words: "bank voltage" },
  "bank peak current": { mark: "P", words: "bank peak current" },
  "bank current": { mark: "B", words: "bank current" },
  "mains current": { mark: "M", words: "mains current" },
  "bus voltage": { mark: "U", words: "bus voltage" },
  junction: { mark: "J", words: "junction temperature" },
};
