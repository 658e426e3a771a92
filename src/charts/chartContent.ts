import { createContext } from "react";
import type { Curve, Level, Marker, Strip } from "./curve";

/** The content of a chart, which may change with every frame, while axes and grid stay. */
export interface ChartContent {
  curves: readonly Curve[];
  markers: readonly Marker[];
  levels: readonly Level[];
  strips: readonly Strip[];
  onHover: (x: number | null) => void;
  /** receives the position of the dragged marker; null if the chart has no draggable marker */
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
