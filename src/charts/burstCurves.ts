/** The curves of one burst, from its results. */
import type { BurstGroup, BurstOutcome } from "../evaluation/burst/burstResults";
import type { Domain } from "./axis";
import type { Curve } from "./curve";

export type BurstQuantity = "primaryCurrent" | "topVoltage";

type Points = Curve["points"];

const UNLOADED_COLOUR = "--ink-soft";
const UNLOADED_DASH = "5 3";
/** px, line width of a waveform that shows every cycle, and of one that shows a few */
const FINE_WIDTH = 0.9;
const NORMAL_WIDTH = 1.6;

/** The points of a record within the window, and the next one on either side. */
function pointsWithin(time: readonly number[], values: readonly number[], { from, to }: Domain): Points {
  const points: { x: number; y: number }[] = [];
  for (let at = 0; at < time.length; at++) {
    const beyond = time[Math.min(at + 1, time.length - 1)] < from || time[Math.max(at - 1, 0)] > to;
    if (!beyond) points.push({ x: time[at], y: values[at] });
  }
  return points;
}

/** Up to this many samples are all drawn; of more, only the extremes are visible. */
const MOST_SAMPLES = 1600;
const EXTREME_GROUPS = 500;

/** Reduces many points to the minimum and maximum of each group of neighbours, in order. */
export function extremes(points: Points): Points {
  if (points.length <= MOST_SAMPLES) return points;
  const size = Math.ceil(points.length / EXTREME_GROUPS);
  return Array.from({ length: Math.ceil(points.length / size) }, (_, group) => {
    const members = points.slice(group * size, (group + 1) * size);
    const least = members.reduce((a, b) => (b.y < a.y ? b : a));
    const most = members.reduce((a, b) => (b.y > a.y ? b : a));
    return least.x <= most.x ? [least, most] : [most, least];
  }).flat();
}

/** The burst with and without the spark; only one if the design has no spark. */
function states(burst: BurstGroup): { outcome: BurstOutcome; loaded: boolean; suffix: string }[] {
  const loaded = { outcome: burst, loaded: true, suffix: "" };
  const same = burst.waveform === burst.unloaded.waveform;
  return same ? [loaded] : [loaded, { outcome: burst.unloaded, loaded: false, suffix: ", no spark" }];
}

/** The waveform and its envelope. */
export function swingCurves(
  burst: BurstGroup,
  quantity: BurstQuantity,
  colour: string,
  window: Domain,
  whole: boolean,
): Curve[] {
  return states(burst).flatMap(({ outcome, loaded, suffix }) => [
    {
      id: `waveform${suffix}`,
      label: `Waveform${suffix}`,
      colour: loaded ? colour : UNLOADED_COLOUR,
      width: whole ? FINE_WIDTH : NORMAL_WIDTH,
      dash: loaded ? undefined : UNLOADED_DASH,
      points: extremes(pointsWithin(outcome.waveform.time, outcome.waveform[quantity], window)),
      shownAtFirst: loaded,
    },
    {
      id: `envelope${suffix}`,
      label: `Envelope${suffix}`,
      colour: loaded ? colour : UNLOADED_COLOUR,
      width: 1.1,
      dash: loaded ? undefined : UNLOADED_DASH,
      mirrored: true,
      points: pointsWithin(outcome.envelope.time, outcome.envelope[quantity], window),
    },
  ]);
}

/** A step for each cycle, as wide as its period. */
function cyclePoints({ frequencyByCycle }: BurstOutcome): Points {
  return frequencyByCycle.flatMap(({ time, frequency }) => [
    { x: time - 1 / frequency, y: frequency },
    { x: time, y: frequency },
  ]);
}

interface Poles {
  lower: number;
  upper: number;
}

function poleCurves({ lower, upper }: Poles, window: Domain, loaded: boolean, suffix: string): Curve[] {
  return [
    { id: "lower", label: "Lower pole", y: lower },
    { id: "upper", label: "Upper pole", y: upper },
  ].map(({ id, label, y }) => ({
    id: `${id}${suffix}`,
    label: `${label}${suffix}`,
    colour: "--ink-soft",
    width: 1,
    dash: loaded ? undefined : UNLOADED_DASH,
    points: [
      { x: window.from, y },
      { x: window.to, y },
    ],
    shownAtFirst: loaded,
  }));
}

/** @param poles of the network with and without the spark; null if it has no response */
export function frequencyCurves(
  burst: BurstGroup,
  poles: { loaded: Poles; unloaded: Poles } | null,
  window: Domain,
): Curve[] {
  return states(burst).flatMap(({ outcome, loaded, suffix }) => [
    {
      id: `cycles${suffix}`,
      label: `Each cycle${suffix}`,
      colour: "--field",
      width: loaded ? undefined : 1.2,
      dash: loaded ? undefined : UNLOADED_DASH,
      points: cyclePoints(outcome),
    },
    ...(poles ? poleCurves(poles[loaded ? "loaded" : "unloaded"], window, loaded, suffix) : []),
  ]);
}
