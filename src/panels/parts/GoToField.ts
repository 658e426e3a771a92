import { createContext } from "react";

/** How a panel sends the builder to the field of a path; the shell that holds the form provides it. */
export const GoToField = createContext<(path: string) => void>(() => undefined);
