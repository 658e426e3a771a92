import { createContext } from "react";
import type { Curve, Level, Marker, Strip } from "./curve";

/** What changes from frame to frame; the frame of axes and grid around it stands still. */
export interface ChartContent {
  curves: readonly Curve[];
  markers: readonly Marker[];
  levels: readonly Level[];
  strips: readonly Strip[];
  onHover: (x: number | null) => void;
  /** where the marker under the hand may be put, null where the chart has none */
  onPlace: ((x: number, phase: "begin" | "move" | "end" | "cancel") => void) | null;
}

export const ChartContentContext = createContext<ChartContent>({
  curves: [],
  markers: [],
  levels: [],
  strips: [],
  onHover: () => {},
  onPlace: null,
});
