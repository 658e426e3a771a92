import { useMemo, useState } from "react";
import { coilLimits } from "../../../calc/music/coilLimits";
import type { CoilLoad, Limiter } from "../../../calc/music/coilLoad";
import { keyFrequency } from "../../../calc/music/equalTemperament";
import type { LiveTone } from "../../../calc/music/liveGate";
import { rateLimit } from "../../../calc/music/noteLimits";
import { wantedOnTime } from "../../../calc/music/noteOnTime";
import type { Arrangement } from "../../../design/arrangement";
import type { Design } from "../../../design/design";
import { arrangementFields } from "../../../fields/showFields";
import { Button } from "../../../ui/Button";
import { formatQuantity } from "../../../units/format";
import { useUnitSystem } from "../../../workbench/session/hooks";
import { workbench } from "../../../workbench/session/session";
import { ScoreQuantity } from "../ScoreQuantity";
import { Keys } from "./Keys";
import styles from "./Live.module.css";
import { NoteLimits } from "./NoteLimits";
import { keyOf, Reading, TONE } from "./Reading";
import { useLiveGate } from "./useLiveGate";
import { useMidiInput } from "./useMidiInput";

const FULL_VELOCITY = 127;

function setOnTime(onTime: number, run?: string): void {
  workbench.editShow(
    arrangementFields.onTime.label,
    (show) => ({ ...show, arrangement: { ...show.arrangement, onTime } }),
    run,
  );
}

/** What shortens a tone; null if nothing does. */
function shortenedBy(
  { rate, onTime }: LiveTone,
  { interrupter }: Design,
  load: CoilLoad | null,
): Limiter | null {
  const limit = rateLimit(rate, interrupter, load);
  return (limit.onTime ?? 0) < onTime ? limit.limitedBy : null;
}

interface LiveCoilProps {
  design: Design;
  /** null if the design has no solution */
  load: CoilLoad | null;
  arrangement: Arrangement;
}

/** Plays one coil's gate live. */
export function LiveCoil({ design, load, arrangement }: LiveCoilProps) {
  const system = useUnitSystem();
  const { interrupter } = design;
  const limits = useMemo(
    () => coilLimits(interrupter, arrangement.voices, load),
    [interrupter, arrangement.voices, load],
  );
  const playing = useLiveGate(limits);
  const { press, release, releaseAll, tones } = playing;
  const [pointedAt, setPointedAt] = useState<number | null>(null);
  const toneOf = (key: number, velocity = FULL_VELOCITY): LiveTone => {
    const rate = keyFrequency(key);
    return { id: String(key), rate, onTime: wantedOnTime(arrangement, velocity / FULL_VELOCITY, rate) };
  };
  const midi = useMidiInput({
    onNote: (key, velocity) => press(toneOf(key, velocity)),
    onRelease: (key) => release(String(key)),
    onSilence: releaseAll,
  });
  const single = tones.some(({ id }) => id === TONE);
  const sounding = new Set(tones.flatMap((each) => keyOf(each) ?? []));
  const { repetitionRate, onTime } = interrupter;
  const rateText = formatQuantity(repetitionRate, "frequency", system, 3).text;
  const onTimeText = formatQuantity(onTime, "time", system, 3).text;
  return (
    <>
      <div className={styles.controls}>
        <ScoreQuantity
          field={arrangementFields.onTime}
          label="On-time at full velocity"
          value={arrangement.onTime}
          onCommit={setOnTime}
        />
      </div>
      {load === null && (
        <p role="status">
          The design has no solution: the load of the bursts is unknown, and only the interrupter's limits are
          kept.
        </p>
      )}
      <NoteLimits design={design} load={load} arrangement={arrangement} />
      <Keys
        sounding={sounding}
        limiterOf={(key) => shortenedBy(toneOf(key), design, load)}
        onPoint={setPointedAt}
        onPress={(key) => press(toneOf(key))}
        onRelease={(key) => release(String(key))}
        onReleaseAll={() => {
          for (const key of sounding) release(String(key));
        }}
      />
      <div className={styles.controls}>
        <Button
          aria-pressed={single}
          onClick={() => (single ? release(TONE) : press({ id: TONE, rate: repetitionRate, onTime }))}
        >
          {single ? "Stop single tone" : "Play single tone"}
        </Button>
        <span>
          {rateText} at {onTimeText}, as set on the design's interrupter
        </span>
        {midi.connect && <Button onClick={midi.connect}>Connect a MIDI keyboard</Button>}
        <Button onClick={releaseAll}>Silence</Button>
        <span role="status">{midi.state}</span>
      </div>
      <Reading
        playing={playing}
        limits={limits}
        design={design}
        pointed={pointedAt === null || sounding.has(pointedAt) ? null : toneOf(pointedAt)}
      />
    </>
  );
}
