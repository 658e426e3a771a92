import { memo } from "react";
import { useStore } from "zustand";
import type { Design } from "../../design/design";
import { scoreFindingMessage } from "../../evaluation/score/scoreFindings";
import { severityLabel } from "../../ui/FindingList";
import { Icon } from "../../ui/Icon";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";
import type { CoilOutcome } from "../../workbench/background/scoreJob";
import { useUnitSystem } from "../../workbench/session/hooks";
import { PianoRoll } from "./PianoRoll";
import { playhead } from "./playhead";
import styles from "./Score.module.css";
import { TimeLines } from "./TimeLines";

/** A line across piano roll and time lines at the preview's position. */
function PlayheadLine({ duration }: { duration: number }) {
  const position = useStore(playhead, (state) => state.position);
  return (
    <span
      className={styles.playhead}
      style={{ left: `${duration > 0 ? (100 * position) / duration : 0}%` }}
      data-testid="playhead"
      aria-hidden="true"
    />
  );
}

interface CoilScoreProps {
  name: string;
  played: CoilOutcome;
  duration: number;
  design: Design;
}

function Findings({ findings }: Pick<CoilOutcome, "findings">) {
  const system = useUnitSystem();
  if (findings.length === 0) return <p className={styles.line}>No limit is approached.</p>;
  return (
    <ul className={styles.findings}>
      {findings.map((finding) => (
        <li key={finding.code}>
          <span className={styles[finding.severity]}>
            <Icon name={finding.severity} /> {severityLabel[finding.severity]}
          </span>{" "}
          {scoreFindingMessage(finding, system)}
        </li>
      ))}
    </ul>
  );
}

function limitsText({ interrupter, drive }: Design, system: UnitSystem, known: boolean): string {
  const time = (seconds: number) => formatQuantity(seconds, "time", system, 3).text;
  const own = `Limits kept: on-time ${time(interrupter.longestOnTime)}, gap ${time(interrupter.shortestGap)}, duty`;
  if (!known) return `${own}; the load of the bursts is unknown, because the design has no solution.`;
  const circuit = `the mains circuit of ${formatQuantity(drive.supply.circuitCurrent, "current", system, 3).text}`;
  return `${own}, over-current limit, bank, ${circuit}, bus voltage and junction temperature, from the design's own burst at full bus voltage.`;
}

function counted(notes: number): string {
  return notes === 1 ? "1 note" : `${notes} notes`;
}

/** One sentence on the notes that were changed for a reason. */
function reasonSentence(reason: string, notes: number): string {
  if (reason === "no voice free") return `${counted(notes)} had no free voice.`;
  if (reason === "gave way to another note")
    return `${counted(notes)} ${notes === 1 ? "was" : "were"} cut by another note.`;
  return `Pulses ${reason.replace("dropped for the gap", "dropped for the minimum gap")} in ${counted(notes)}.`;
}

/** The outcome of one coil's notes, and their load on the coil. */
export const CoilScore = memo(({ name, played, duration, design }: CoilScoreProps) => {
  const system = useUnitSystem();
  const { fates, reasons, pulses } = played.summary;
  return (
    <section className={styles.coil} aria-label={`${name} coil`}>
      <h3 className={styles.heading}>{name} coil</h3>
      <p className={styles.line}>
        Notes: {fates.played} played, {fates.shortened} shortened, {fates.dropped} dropped; {pulses} pulses.
        {reasons.map(({ reason, notes }) => ` ${reasonSentence(reason, notes)}`)}
      </p>
      <p className={styles.line}>{limitsText(design, system, played.line.load !== null)}</p>
      <Findings findings={played.findings} />
      <div className={styles.along}>
        <PianoRoll name={name} roll={played.roll} duration={duration} />
        <TimeLines name={name} line={played.line} moments={played.moments} duration={duration} />
        <PlayheadLine duration={duration} />
      </div>
      <p className={styles.line}>
        Filled: played. Half filled: shortened. Crossed out: dropped. “By load”: limited by mains, bus, bank
        or junction; “beside others”: limited because the notes of a chord share the coil's limits. Dashed:
        limit. Dotted: worst moment. Averages are over the window of the limits.
      </p>
    </section>
  );
});
