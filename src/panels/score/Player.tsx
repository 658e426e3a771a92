import { useEffect, useRef, useState } from "react";
import type { Gates } from "../../calc/music/scheduleCsv";
import { Button } from "../../ui/Button";
import { playhead } from "./playhead";
import { Preview } from "./preview";
import styles from "./Score.module.css";

const clock = (time: number) => `${Math.floor(time / 60)}:${String(Math.floor(time % 60)).padStart(2, "0")}`;

/** ms */
const REFRESH = 100;

/** Updates the playhead, and lets it seek. */
function usePlayhead(leads: boolean, position: number, seek: (time: number) => void): void {
  const latest = useRef(seek);
  latest.current = seek;
  useEffect(() => {
    if (!leads) return;
    playhead.setState({ seek: (time) => latest.current(time) });
    return () => playhead.setState({ position: 0, seek: null });
  }, [leads]);
  useEffect(() => {
    if (leads) playhead.setState({ position });
  }, [leads, position]);
}

interface PlayerProps {
  gates: Gates;
  duration: number;
  /** whether this player drives the playhead on the rolls and time lines */
  leads?: boolean;
}

/** Plays the gates as sound in the browser; it drives no coil. */
export function Player({ gates, duration, leads = false }: PlayerProps) {
  const preview = useRef<Preview | null>(null);
  const [playing, setPlaying] = useState(false);
  const [position, setPosition] = useState(0);
  const [volume, setVolume] = useState(0.3);
  useEffect(() => {
    return () => {
      preview.current?.close();
      preview.current = null;
    };
  }, []);
  useEffect(() => {
    if (!playing) return;
    const timer = setInterval(() => {
      const now = preview.current?.position ?? 0;
      setPosition(Math.min(now, duration));
      if (now < duration) return;
      preview.current?.pause();
      setPlaying(false);
    }, REFRESH);
    return () => clearInterval(timer);
  }, [playing, duration]);
  const toggle = () => {
    preview.current ??= new Preview(gates, duration);
    preview.current.volume = volume;
    if (playing) preview.current.pause();
    else {
      preview.current.seek(position >= duration ? 0 : position);
      preview.current.play();
    }
    setPlaying(!playing);
  };
  const seek = (time: number) => {
    setPosition(time);
    preview.current?.seek(time);
  };
  usePlayhead(leads, position, seek);
  const changeVolume = (value: number) => {
    setVolume(value);
    if (preview.current) preview.current.volume = value;
  };
  return (
    <div className={styles.player}>
      <Button kind="filled" disabled={duration === 0} onClick={toggle}>
        {playing ? "Pause" : "Play"}
      </Button>
      <input
        type="range"
        aria-label="Position in the score"
        aria-valuetext={clock(position)}
        min={0}
        max={duration}
        step="any"
        value={position}
        onChange={(event) => seek(event.target.valueAsNumber)}
      />
      <output className={styles.clock}>
        {clock(position)} / {clock(duration)}
      </output>
      <label className={styles.volume}>
        Volume
        <input
          type="range"
          min={0}
          max={1}
          step={0.01}
          value={volume}
          onChange={(event) => changeVolume(event.target.valueAsNumber)}
        />
      </label>
    </div>
  );
}
