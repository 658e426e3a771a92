import { createContext } from "react";

/** What the page provides to a part that failed; `ui` itself has no access to the session. */
export interface Containment {
  /** lines for the report: the program's version and what is open */
  account: () => string;
  /** calls back after a change that may have removed the cause; returns the unsubscribe function */
  onChange: (tryAgain: () => void) => () => void;
}

export const ContainmentContext = createContext<Containment>({
  account: () => "",
  onChange: () => () => undefined,
});

/** A part of the program that failed to load: no network, or another version on the server. */
export class PartNotLoaded extends Error {
  override name = "PartNotLoaded";
}
