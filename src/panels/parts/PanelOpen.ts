import { createContext } from "react";

/** Whether the panel around is open: figures in a closed one need not follow every edit. */
export const PanelOpen = createContext(true);
