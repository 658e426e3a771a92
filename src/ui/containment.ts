import { createContext } from "react";

/** What the page tells of itself where a part of it has failed; parts of the screen know no session. */
export interface Containment {
  /** for the report: the program's version and what is open */
  account: () => string;
  /** calls back once something has changed that may mend what failed; returns what ends it */
  onChange: (tryAgain: () => void) => () => void;
}

export const ContainmentContext = createContext<Containment>({
  account: () => "",
  onChange: () => () => undefined,
});

/** A part of the program that did not come: no network, or another version on the server. */
export class PartNotLoaded extends Error {
  override name = "PartNotLoaded";
}
