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

/** A line over roll and time lines where the preview is. */
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
  if (findings.length === 0) return <p className={styles.line}>Nothing comes near a limit.</p>;
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
  const own = `Kept throughout: on-time ${time(interrupter.longestOnTime)}, gap ${time(interrupter.shortestGap)}, duty`;
  if (!known) return `${own}; what bursts cost is not known, because the design has no solution.`;
  const circuit = `the mains circuit of ${formatQuantity(drive.supply.circuitCurrent, "current", system, 3).text}`;
  return `${own}, over-current limit, bank, ${circuit}, bus voltage and junction, from the design's own burst at a full bus.`;
}

function counted(notes: number): string {
  return notes === 1 ? "1 note" : `${notes} notes`;
}

/** What happened to some notes, in a sentence. */
function reasonSentence(reason: string, notes: number): string {
  if (reason === "no voice free") return `${counted(notes)} had no free voice.`;
  if (reason === "gave way to another note")
    return `${counted(notes)} ${notes === 1 ? "was" : "were"} cut by another.`;
  return `Pulses ${reason.replace("dropped for the gap", "dropped for the minimum gap")} in ${counted(notes)}.`;
}

/** What became of the notes of one coil, and what they do to it. */
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
        Filled: played. Half filled: shortened. Crossed out: dropped. By load: by mains, bus, bank and
        junction; beside others: by what the notes of a chord may ask for together. Dashed: limit. Dotted:
        worst moment. Means over the window of the limits.
      </p>
    </section>
  );
});
