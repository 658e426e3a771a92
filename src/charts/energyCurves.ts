import type { EnergyPoint, EnergySweep } from "../calc/circuit/energySweep";
import type { Curve } from "./curve";

/** Styles of the other on-times, shortest first. */
const STYLES = [
  { colour: "--field", dash: "2 3" },
  { colour: "--field", dash: "7 4" },
  { colour: "--winding", dash: "7 4" },
  { colour: "--winding", dash: "2 3" },
];
const OWN_WIDTH = 2.8;
const OTHER_WIDTH = 1.4;

/** One curve per on-time against the tap; the design's own is drawn last and thicker. */
export function energyCurves(
  { points, onTime }: EnergySweep,
  value: (point: EnergyPoint) => number,
  time: (onTime: number) => string,
): Curve[] {
  const row = (each: number) =>
    points.filter((point) => point.onTime === each).map((point) => ({ x: point.tap, y: value(point) }));
  const others = [...new Set(points.map((point) => point.onTime))]
    .filter((each) => each !== onTime)
    .sort((a, b) => a - b);
  return [
    ...others.map((each, index) => ({
      ...STYLES[index % STYLES.length],
      id: `other ${index}`,
      label: time(each),
      width: OTHER_WIDTH,
      points: row(each),
    })),
    {
      id: "own",
      label: `${time(onTime)}, the design's on-time`,
      colour: "--copper",
      width: OWN_WIDTH,
      points: row(onTime),
    },
  ];
}
