import { scheduleSummary } from "../../calc/music/scheduleSummary";
import type { Design } from "../../design/design";
import { formatQuantity } from "../../units/format";
import { useUnitSystem } from "../../workbench/hooks";
import type { PlayedCoil } from "../../workbench/scoreScheduling";
import { PianoRoll } from "./PianoRoll";
import styles from "./Score.module.css";

interface CoilScoreProps {
  name: string;
  played: PlayedCoil;
  duration: number;
  interrupter: Design["interrupter"];
}

/** What became of the notes of one coil. */
export function CoilScore({ name, played, duration, interrupter }: CoilScoreProps) {
  const system = useUnitSystem();
  const { fates, reasons, pulses } = scheduleSummary(played.schedule);
  const time = (seconds: number) => formatQuantity(seconds, "time", system, 3).text;
  const duty = formatQuantity(interrupter.dutyLimit, "percent", system, 3).text;
  return (
    <section className={styles.coil} aria-label={`${name} coil`}>
      <h3 className={styles.heading}>{name} coil</h3>
      <p className={styles.line}>
        {fates.played} notes played, {fates.shortened} shortened, {fates.dropped} dropped; {pulses} pulses.
        {reasons.map(({ reason, notes }) => ` ${notes} × ${reason}.`)}
      </p>
      <p className={styles.line}>
        Limits of the interrupter: on-time {time(interrupter.longestOnTime)}, gap{" "}
        {time(interrupter.shortestGap)}, duty {duty} over {time(interrupter.dutyWindow)}. What its bursts
        allow is not part of it.
      </p>
      <PianoRoll name={name} played={played} duration={duration} dutyLimit={interrupter.dutyLimit} />
      <p className={styles.line}>
        Filled: played. Half filled: shortened. Crossed out: dropped. Dashed: duty limit.
      </p>
    </section>
  );
}
