import { createContext } from "react";

/** Lets a panel show the field of a path; provided by the layout that contains the form. */
export const GoToField = createContext<(path: string) => void>(() => undefined);
