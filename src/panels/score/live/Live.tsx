import { useMemo, useState } from "react";
import { coilLimits } from "../../../calc/music/coilLimits";
import { keyFrequency, keyName } from "../../../calc/music/equalTemperament";
import type { CoilLimits } from "../../../calc/music/lane";
import type { LiveTone } from "../../../calc/music/liveGate";
import { allowedOnTime, wantedOnTime } from "../../../calc/music/noteOnTime";
import type { Arrangement } from "../../../design/arrangement";
import type { Design } from "../../../design/design";
import { Button } from "../../../ui/Button";
import { ChoiceField } from "../../../ui/ChoiceField";
import type { Dimension } from "../../../units/dimension";
import { formatQuantity } from "../../../units/format";
import { useUnitSystem } from "../../../workbench/hooks";
import type { Interrupters } from "../../../workbench/scoreScheduling";
import { Keys } from "./Keys";
import styles from "./Live.module.css";
import { type LivePlaying, useLiveGate } from "./useLiveGate";
import { useMidiInput } from "./useMidiInput";

const TONE = "tone";
const FULL_VELOCITY = 127;

function keyOf({ id }: LiveTone): number | null {
  return id === TONE ? null : Number(id);
}

/** What sounds, with its on-time and what became of it, and the duty over the window. */
function Reading({ playing, limits }: { playing: LivePlaying; limits: CoilLimits }) {
  const system = useUnitSystem();
  const text = (value: number, dimension: Dimension) => formatQuantity(value, dimension, system, 3).text;
  const { tones, duty } = playing;
  return (
    <div className={styles.reading}>
      <p>
        <label>
          Duty{" "}
          <meter min={0} max={limits.dutyLimit} high={0.9 * limits.dutyLimit} value={duty}>
            {text(duty, "percent")}
          </meter>
        </label>{" "}
        <output aria-label="Duty now">{text(duty, "percent")}</output> of {text(limits.dutyLimit, "percent")}{" "}
        allowed over {text(limits.dutyWindow, "time")}
      </p>
      {tones.length === 0 && <p>Nothing sounds.</p>}
      {tones.map((tone) => {
        const key = keyOf(tone);
        const allowed = allowedOnTime(limits, tone.rate);
        const name = key === null ? "Single tone" : keyName(key);
        return (
          <p key={tone.id}>
            {name}: {text(tone.rate, "frequency")}, on-time {text(Math.min(tone.onTime, allowed), "time")}
            {tone.onTime > allowed && `, shortened from ${text(tone.onTime, "time")}`}, duty by itself{" "}
            {text(Math.min(tone.onTime, allowed) * tone.rate, "percent")}
          </p>
        );
      })}
    </div>
  );
}

interface LiveCoilProps {
  interrupter: Design["interrupter"];
  arrangement: Arrangement;
}

/** One coil's interrupter under the fingers. */
function LiveCoil({ interrupter, arrangement }: LiveCoilProps) {
  const system = useUnitSystem();
  const limits = useMemo(
    () => coilLimits(interrupter, arrangement.voices),
    [interrupter, arrangement.voices],
  );
  const playing = useLiveGate(limits);
  const { press, release, releaseAll, tones } = playing;
  const note = (key: number, velocity: number) => {
    const rate = keyFrequency(key);
    press({ id: String(key), rate, onTime: wantedOnTime(arrangement, velocity / FULL_VELOCITY, rate) });
  };
  const midi = useMidiInput({
    onNote: note,
    onRelease: (key) => release(String(key)),
    onSilence: releaseAll,
  });
  const tone = tones.some(({ id }) => id === TONE);
  const sounding = new Set(tones.flatMap((each) => keyOf(each) ?? []));
  const { repetitionRate, onTime } = interrupter;
  const rateText = formatQuantity(repetitionRate, "frequency", system, 3).text;
  const onTimeText = formatQuantity(onTime, "time", system, 3).text;
  return (
    <>
      <Keys
        sounding={sounding}
        onPress={(key) => note(key, FULL_VELOCITY)}
        onRelease={(key) => release(String(key))}
        onReleaseAll={() => {
          for (const key of sounding) release(String(key));
        }}
      />
      <div className={styles.ways}>
        <Button
          aria-pressed={tone}
          onClick={() => (tone ? release(TONE) : press({ id: TONE, rate: repetitionRate, onTime }))}
        >
          {tone ? "Stop the single tone" : "Play the single tone"}
        </Button>
        <span>
          {rateText} at {onTimeText}, as the design's interrupter is set
        </span>
        {midi.connect && <Button onClick={midi.connect}>Connect a MIDI keyboard</Button>}
        <Button onClick={releaseAll}>Silence</Button>
        <span role="status">{midi.state}</span>
      </div>
      <Reading playing={playing} limits={limits} />
    </>
  );
}

const COILS = ["left", "right"] as const;

/** A keyboard that plays one coil's gate in the browser, through the limits of its score. */
export function Live({
  interrupters,
  arrangement,
}: {
  interrupters: Interrupters;
  arrangement: Arrangement;
}) {
  const [open, setOpen] = useState(false);
  const [coil, setCoil] = useState<(typeof COILS)[number]>("left");
  const chosen = interrupters[coil] ? coil : "left";
  const interrupter = interrupters[chosen];
  return (
    <details className={styles.live} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2 className={styles.heading}>Play by hand</h2>
      </summary>
      {open && interrupter && (
        <>
          <p className={styles.note}>
            Sound alone: nothing is driven from here. The interrupter's limits and the arrangement's on-time
            hold for every key; what bursts cost in current, heat and supply is not part of them.
          </p>
          {interrupters.right && (
            <ChoiceField
              label="Coil under the keys"
              options={COILS}
              value={chosen}
              onCommit={(value) => setCoil(value === "right" ? "right" : "left")}
            />
          )}
          <LiveCoil key={chosen} interrupter={interrupter} arrangement={arrangement} />
        </>
      )}
    </details>
  );
}
