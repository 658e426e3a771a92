import { keyName } from "../../../calc/music/equalTemperament";
import type { CoilLimits } from "../../../calc/music/lane";
import type { LiveTone } from "../../../calc/music/liveGate";
import { rateLimit } from "../../../calc/music/noteLimits";
import { toneReading } from "../../../calc/music/toneReading";
import type { Design } from "../../../design/design";
import type { Dimension } from "../../../units/dimension";
import { formatQuantity } from "../../../units/format";
import { useUnitSystem } from "../../../workbench/session/hooks";
import { LIMITER_WORDS } from "../limiterWords";
import styles from "./Live.module.css";
import type { LivePlaying } from "./useLiveGate";

export const TONE = "tone";

/** The key of a tone; null for the single tone. */
export function keyOf({ id }: LiveTone): number | null {
  return id === TONE ? null : Number(id);
}

type Text = (value: number, dimension: Dimension) => string;

/** The load of one continuous tone on the coil. */
function toneText(tone: LiveTone, { load }: CoilLimits, { interrupter }: Design, text: Text): string {
  const limit = rateLimit(tone.rate, interrupter, load);
  const onTime = Math.min(tone.onTime, limit.onTime ?? 0);
  const { duty, power, mainsCurrent, junctionTemperature } = toneReading(tone.rate, onTime, load);
  const by = LIMITER_WORDS[limit.limitedBy].words;
  if (onTime === 0 && tone.onTime > 0) return `not allowed: ${by}`;
  const shortened = tone.onTime > onTime ? `, shortened from ${text(tone.onTime, "time")} by ${by}` : "";
  const parts = [
    `on-time ${text(onTime, "time")}${shortened}`,
    `duty alone ${text(duty, "percent")}`,
    power !== null && text(power, "power"),
    mainsCurrent !== null && `mains ${text(mainsCurrent, "current")}`,
    junctionTemperature !== null && `junction ${text(junctionTemperature, "temperature")}`,
  ];
  return parts.filter((part) => part !== false).join(", ");
}

interface ReadingProps {
  playing: LivePlaying;
  limits: CoilLimits;
  design: Design;
  /** the tone of the key under the pointer, unless it is sounding */
  pointed: LiveTone | null;
}

/** The sounding tones and the one under the pointer with their load on the coil, and the duty over the window. */
export function Reading({ playing, limits, design, pointed }: ReadingProps) {
  const system = useUnitSystem();
  const text: Text = (value, dimension) => formatQuantity(value, dimension, system, 3).text;
  const { tones, duty } = playing;
  const line = (tone: LiveTone) => {
    const key = keyOf(tone);
    const name = key === null ? "Single tone" : keyName(key);
    return `${name}: ${text(tone.rate, "frequency")}, ${toneText(tone, limits, design, text)}`;
  };
  return (
    <div className={styles.reading}>
      <p>
        <label>
          Duty{" "}
          <meter min={0} max={limits.dutyLimit} high={0.9 * limits.dutyLimit} value={duty}>
            {text(duty, "percent")}
          </meter>
        </label>{" "}
        <output aria-label="Present duty">{text(duty, "percent")}</output> of{" "}
        {text(limits.dutyLimit, "percent")} allowed over {text(limits.dutyWindow, "time")}
      </p>
      {tones.length === 0 && <p>No tone is sounding.</p>}
      {tones.map((tone) => (
        <p key={tone.id}>{line(tone)}</p>
      ))}
      <p className={styles.pointed}>{pointed ? line(pointed) : "\u00a0"}</p>
    </div>
  );
}
