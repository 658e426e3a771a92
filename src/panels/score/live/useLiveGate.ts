import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { CoilLimits } from "../../../calc/music/lane";
import { dutyBefore, LiveGate, type LiveTone } from "../../../calc/music/liveGate";
import { LiveSound } from "./liveSound";

/** ms */
const TICK = 20;

export interface LivePlaying {
  press: (tone: LiveTone) => void;
  release: (id: string) => void;
  releaseAll: () => void;
  /** the sounding tones */
  tones: readonly LiveTone[];
  /** over the window that ends now */
  duty: number;
}

/** A gate to play live, with its sound; new limits start a new, silent gate. */
export function useLiveGate(limits: CoilLimits): LivePlaying {
  const live = useMemo(() => new LiveGate(limits), [limits]);
  const sound = useRef<LiveSound | null>(null);
  const [tones, setTones] = useState<readonly LiveTone[]>([]);
  const [duty, setDuty] = useState(0);

  useEffect(() => {
    setTones([]);
    setDuty(0);
    const timer = setInterval(() => {
      if (!sound.current) return;
      sound.current.follow(live);
      setDuty(dutyBefore(live.gate, sound.current.time, limits.dutyWindow));
    }, TICK);
    return () => clearInterval(timer);
  }, [live, limits]);

  useEffect(() => {
    return () => {
      sound.current?.close();
      sound.current = null;
    };
  }, []);

  const press = useCallback(
    (tone: LiveTone) => {
      sound.current ??= new LiveSound();
      live.press(tone, sound.current.time);
      setTones(live.tones);
    },
    [live],
  );
  const release = useCallback(
    (id: string) => {
      live.release(id);
      setTones(live.tones);
    },
    [live],
  );
  const releaseAll = useCallback(() => {
    live.releaseAll();
    setTones(live.tones);
  }, [live]);
  return { press, release, releaseAll, tones, duty };
}
