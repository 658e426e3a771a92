import { gateWave } from "../../calc/music/gateWave";
import { type Gates, scheduleCsv } from "../../calc/music/scheduleCsv";
import { fileStem } from "../../design/fileName";
import { Button } from "../../ui/Button";
import { saveFile } from "../../ui/saveFile";
import styles from "./Score.module.css";

const SAMPLE_RATE = 48_000;

interface TakeAwayProps {
  gates: Gates;
  duration: number;
  /** the score's */
  title: string;
  /** while the schedule is older than what it was made from */
  disabled: boolean;
}

/** The schedule as files, with what must be said beside them. */
export function TakeAway({ gates, duration, title, disabled }: TakeAwayProps) {
  const coils = (["left", "right"] as const).filter((coil) => gates[coil]);
  const stem = [fileStem(title), ...coils, "gate"].join("-");
  const csv = () => saveFile(`${stem}-schedule.csv`, scheduleCsv(gates), "text/csv");
  const wave = () => saveFile(`${stem}-wave.wav`, gateWave(gates, duration, SAMPLE_RATE), "audio/wav");
  return (
    <div className={styles.player}>
      <Button disabled={disabled} onClick={csv}>
        Gate schedule (CSV)
      </Button>
      <Button disabled={disabled} onClick={wave}>
        Gate wave (WAV)
      </Button>
      <p className={styles.caution}>
        <strong>Caution.</strong> A schedule drives lethal apparatus. The limits of each coil are already in
        it, but no file stops a fault: keep the hardware's own limiter and a dead-man switch in the line, keep
        people outside the barrier, and follow local codes and licensed practice.
      </p>
    </div>
  );
}
