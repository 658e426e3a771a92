import { useMemo } from "react";
import type { CoilLoad, Limiter } from "../../../calc/music/coilLoad";
import { keyName } from "../../../calc/music/equalTemperament";
import { type NoteLimit, noteLimits } from "../../../calc/music/noteLimits";
import { wantedOnTime } from "../../../calc/music/noteOnTime";
import type { Arrangement } from "../../../design/arrangement";
import type { Design } from "../../../design/design";
import { formatQuantity } from "../../../units/format";
import { useUnitSystem } from "../../../workbench/session/hooks";
import { LIMITER_WORDS } from "../limiterWords";
import styles from "./Live.module.css";

const WIDTH = 900;
const HEIGHT = 96;

interface LimitRange {
  limiter: Limiter;
  notes: NoteLimit[];
}

/** Groups neighbouring notes by the limit that applies to them. */
export function limitRanges(limits: readonly NoteLimit[]): LimitRange[] {
  const all: LimitRange[] = [];
  for (const note of limits) {
    const last = all.at(-1);
    if (last?.limiter === note.limitedBy) last.notes.push(note);
    else all.push({ limiter: note.limitedBy, notes: [note] });
  }
  return all;
}

interface PlotProps {
  limits: readonly NoteLimit[];
  arrangement: Arrangement;
}

/** Allowed on-times as columns, the arrangement's on-times as a line. */
function Plot({ limits, arrangement }: PlotProps) {
  const requested = limits.map(({ rate }) => wantedOnTime(arrangement, 1, rate));
  const highest = Math.max(...requested, ...limits.map(({ onTime }) => onTime ?? 0)) * 1.05;
  const column = WIDTH / limits.length;
  const y = (onTime: number) => (HEIGHT * (1 - onTime / highest)).toFixed(1);
  const line = requested.map((onTime, index) => `${index ? "L" : "M"}${(index + 0.5) * column} ${y(onTime)}`);
  return (
    <svg
      className={styles.limits}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      role="img"
      aria-label="Longest on-time of each note, G1 to C7, and the requested on-time"
    >
      {limits.map(({ key, onTime, limitedBy }, index) => (
        <path
          key={key}
          className={
            index > 0 && limits[index - 1].limitedBy !== limitedBy ? styles.boundary : styles.allowed
          }
          d={`M${index * column} ${HEIGHT}V${y(onTime ?? 0)}h${column - 1}V${HEIGHT}z`}
        />
      ))}
      <path className={styles.requested} d={line.join("")} />
    </svg>
  );
}

interface NoteLimitsProps extends Pick<PlotProps, "arrangement"> {
  design: Design;
  load: CoilLoad | null;
}

/** The longest on-time of each note in range, and what limits it. */
export function NoteLimits({ design, load, arrangement }: NoteLimitsProps) {
  const system = useUnitSystem();
  const limits = useMemo(() => noteLimits(design.interrupter, load), [design.interrupter, load]);
  const time = (onTime: number | null) =>
    onTime === null ? "no pulse" : formatQuantity(onTime, "time", system, 3).text;
  return (
    <figure className={styles.noteLimits}>
      <figcaption>Longest on-time of each note, G1 to C7; dashed: on-time that the keys request</figcaption>
      <Plot limits={limits} arrangement={arrangement} />
      <ul className={styles.ranges}>
        {limitRanges(limits).map(({ limiter, notes }) => {
          const [first, last] = [notes[0], notes[notes.length - 1]];
          const span = first === last ? keyName(first.key) : `${keyName(first.key)} – ${keyName(last.key)}`;
          const from = time(first.onTime);
          const to = time(last.onTime);
          return (
            <li key={`${limiter} ${first.key}`}>
              {span}: {from === to ? from : `${from} to ${to}`}, by {LIMITER_WORDS[limiter].words}
            </li>
          );
        })}
      </ul>
    </figure>
  );
}
