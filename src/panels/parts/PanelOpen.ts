import { createContext } from "react";

/** Whether the enclosing panel is open: figures in a closed one need not be updated. */
export const PanelOpen = createContext(true);
