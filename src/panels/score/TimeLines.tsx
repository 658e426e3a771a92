import { useMemo } from "react";
import type { TimeLine } from "../../calc/music/timeLine";
import type { ScoreQuantity, WorstMoment } from "../../calc/music/worstMoments";
import type { ResultEntry } from "../../evaluation/register/entry";
import { clock } from "../../evaluation/score/scoreFindings";
import { SCORE_RESULTS } from "../../evaluation/score/scoreResults";
import { Popover } from "../../ui/Popover";
import { formatQuantity } from "../../units/format";
import { useUnitSystem } from "../../workbench/session/hooks";
import { Provenance } from "../parts/Provenance";
import styles from "./TimeLines.module.css";
import { columnsOf, linePath, spanOf, yAt } from "./timeLinePath";

const WIDTH = 900;
const HEIGHT = 46;
const COLUMN_WIDTH = 1.5;

function valuesOf({ duty, load }: TimeLine, quantity: ScoreQuantity): readonly number[] {
  if (quantity === "duty") return duty;
  return load ? load[quantity] : [];
}

interface PlotProps {
  values: readonly number[];
  moment: WorstMoment;
  duration: number;
  spoken: string;
}

function Plot({ values, moment, duration, spoken }: PlotProps) {
  const { span, path } = useMemo(() => {
    const columns = columnsOf(values, moment.rest, WIDTH / COLUMN_WIDTH);
    const own = spanOf(columns, moment);
    return { span: own, path: linePath(columns, own, WIDTH, HEIGHT) };
  }, [values, moment]);
  const x = duration > 0 ? (moment.time / duration) * WIDTH : 0;
  const limitY = moment.limit === null ? null : yAt(moment.limit, span, HEIGHT);
  return (
    <svg
      className={styles.plot}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      role="img"
      aria-label={spoken}
    >
      <path className={styles.area} d={`${path}V${HEIGHT}H0Z`} />
      <path className={styles.curve} d={path} />
      {limitY !== null && <path className={styles.limit} d={`M0 ${limitY}H${WIDTH}`} />}
      <path className={styles.worst} d={`M${x} 0V${HEIGHT}`} />
    </svg>
  );
}

function Caption({ entry, moment }: { entry: ResultEntry; moment: WorstMoment }) {
  const system = useUnitSystem();
  const text = (value: number | null) => formatQuantity(value, entry.dimension, system, 4).text;
  const bound = moment.limit !== null && moment.limit < moment.rest ? "at least" : "of";
  const limit = moment.limit === null ? "" : ` ${bound} ${text(moment.limit)}`;
  return (
    <figcaption className={styles.caption}>
      <Popover
        title={`${entry.label}, ${entry.symbol}`}
        name={`${entry.label}: where it comes from`}
        className={styles.label}
        mark={entry.label}
        role="dialog"
      >
        {({ open, close }) => open && <Provenance entry={entry} close={close} />}
      </Popover>
      <span>
        {text(moment.value)}
        {limit} at {clock(moment.time)}
      </span>
    </figcaption>
  );
}

interface TimeLinesProps {
  name: string;
  line: TimeLine;
  moments: readonly WorstMoment[];
  duration: number;
}

/** The load of the score on a coil: one line per quantity below the notes, with limits and worst moments. */
export function TimeLines({ name, line, moments, duration }: TimeLinesProps) {
  const system = useUnitSystem();
  return (
    <div className={styles.lines}>
      {moments.map((moment) => {
        const entry = SCORE_RESULTS[moment.quantity];
        const values = valuesOf(line, moment.quantity);
        const worst = formatQuantity(moment.value, entry.dimension, system, 4).text;
        return (
          <figure key={moment.quantity} className={styles.line}>
            <Caption entry={entry} moment={moment} />
            <Plot
              values={values}
              moment={moment}
              duration={duration}
              spoken={`${entry.label} of the ${name} coil over the score, worst value ${worst}`}
            />
          </figure>
        );
      })}
    </div>
  );
}
