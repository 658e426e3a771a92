import { type FocusEvent, type KeyboardEvent, useState } from "react";
import type { Limiter } from "../../../calc/music/coilLoad";
import { keyName } from "../../../calc/music/equalTemperament";
import { Button } from "../../../ui/Button";
import { LIMITER_WORDS } from "../limiterWords";
import styles from "./Live.module.css";

/** Codes of the computer's keys in piano layout, from C up. */
const CODES = [
  "KeyA",
  "KeyW",
  "KeyS",
  "KeyE",
  "KeyD",
  "KeyF",
  "KeyT",
  "KeyG",
  "KeyY",
  "KeyH",
  "KeyU",
  "KeyJ",
  "KeyK",
];
const FIRST = 48;
const LOWEST = 12;
const HIGHEST = 108;

interface KeysProps {
  /** keys that are sounding */
  sounding: ReadonlySet<number>;
  /** what would shorten a key's note; null if nothing would */
  limiterOf: (key: number) => Limiter | null;
  /** the key under the pointer or with the focus; null for none */
  onPoint: (key: number | null) => void;
  onPress: (key: number) => void;
  onRelease: (key: number) => void;
  onReleaseAll: () => void;
}

/** One octave of keys, played with the pointer or, while one of them has the focus, the computer's keys. */
export function Keys({ sounding, limiterOf, onPoint, onPress, onRelease, onReleaseAll }: KeysProps) {
  const [lowest, setLowest] = useState(FIRST);
  const shift = (semitones: number) => {
    onReleaseAll();
    setLowest(Math.min(HIGHEST, Math.max(LOWEST, lowest + semitones)));
  };
  const keyOf = (event: KeyboardEvent): number | null => {
    if (event.ctrlKey || event.metaKey || event.altKey) return null;
    const index = CODES.indexOf(event.code);
    return index < 0 ? null : lowest + index;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const key = keyOf(event);
    if (key === null) return;
    event.preventDefault();
    event.stopPropagation();
    if (!event.repeat) onPress(key);
  };
  const onKeyUp = (event: KeyboardEvent) => {
    const index = CODES.indexOf(event.code);
    if (index >= 0) onRelease(lowest + index);
  };
  const onBlur = (event: FocusEvent<HTMLFieldSetElement>) => {
    if (!event.currentTarget.contains(event.relatedTarget)) onReleaseAll();
  };
  const limiters = CODES.map((_, index) => limiterOf(lowest + index));
  return (
    <fieldset className={styles.keyboard} onKeyDown={onKeyDown} onKeyUp={onKeyUp} onBlur={onBlur}>
      <legend>Keys: click one, then play with A to K on the computer keyboard</legend>
      <Button onClick={() => shift(-12)} disabled={lowest <= LOWEST}>
        Octave down
      </Button>
      <div className={styles.keys}>
        {CODES.map((code, index) => (
          <Key
            key={code}
            note={lowest + index}
            letter={code.slice(-1)}
            sounding={sounding.has(lowest + index)}
            limiter={limiters[index]}
            onPoint={onPoint}
            onPress={onPress}
            onRelease={onRelease}
          />
        ))}
      </div>
      <Button onClick={() => shift(12)} disabled={lowest >= HIGHEST}>
        Octave up
      </Button>
      <LimiterLegend limiters={limiters} />
    </fieldset>
  );
}

/** The letters on the keys, in words. */
function LimiterLegend({ limiters }: { limiters: readonly (Limiter | null)[] }) {
  const present = [...new Set(limiters)].filter((limiter) => limiter !== null);
  if (present.length === 0) return <p className={styles.legend}>None of these keys is shortened.</p>;
  return (
    <p className={styles.legend}>
      Keys shortened by{" "}
      {present.map((limiter, index) => (
        <span key={limiter}>
          {index > 0 && ", "}
          <b>{LIMITER_WORDS[limiter].mark}</b> {LIMITER_WORDS[limiter].words}
        </span>
      ))}
    </p>
  );
}

interface KeyProps {
  note: number;
  letter: string;
  sounding: boolean;
  limiter: Limiter | null;
  onPoint: KeysProps["onPoint"];
  onPress: (key: number) => void;
  onRelease: (key: number) => void;
}

function Key({ note, letter, sounding, limiter, onPoint, onPress, onRelease }: KeyProps) {
  const name = keyName(note);
  const release = () => onRelease(note);
  return (
    <button
      type="button"
      className={`${styles.key} ${name.includes("#") ? styles.sharp : ""}`}
      aria-pressed={sounding}
      title={limiter ? `Shortened by ${LIMITER_WORDS[limiter].words}` : undefined}
      onPointerEnter={() => onPoint(note)}
      onFocus={() => onPoint(note)}
      onBlur={() => onPoint(null)}
      onPointerDown={(event) => {
        // some browsers do not focus a clicked button, and the computer's keys need the focus here
        event.currentTarget.focus();
        onPress(note);
      }}
      onPointerUp={release}
      onPointerLeave={() => {
        release();
        onPoint(null);
      }}
      onPointerCancel={release}
      onKeyDown={(event) => {
        if (event.key === "Enter" && !event.repeat) onPress(note);
      }}
      onKeyUp={(event) => {
        if (event.key === "Enter") release();
      }}
    >
      {limiter && (
        <small className={styles.limiter} aria-hidden="true">
          {LIMITER_WORDS[limiter].mark}
        </small>
      )}
      <span>{name}</span>
      <small aria-hidden="true">{letter}</small>
    </button>
  );
}
