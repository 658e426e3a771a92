import { useEffect, useState } from "react";
import type { Gates } from "../../calc/music/scheduleCsv";
import { fileStem } from "../../design/fileName";
import { Button } from "../../ui/Button";
import { FollowedProgress } from "../../ui/FollowedProgress";
import { saveBlob } from "../../ui/saveFile";
import { newGateFiles } from "../../workbench/background/gateFiles";
import styles from "./Score.module.css";

interface GateExportProps {
  gates: Gates;
  duration: number;
  /** of the score */
  title: string;
  /** while the schedule is out of date */
  disabled: boolean;
}

/** Exports the schedule as files, with the caution that goes with them. */
export function GateExport({ gates, duration, title, disabled }: GateExportProps) {
  const coils = (["left", "right"] as const).filter((coil) => gates[coil]);
  const stem = [fileStem(title), ...coils, "gate"].join("-");
  const [files] = useState(() => newGateFiles(saveBlob));
  useEffect(() => files.close, [files]);
  const csv = () => files.insist({ kind: "schedule", fileName: `${stem}-schedule.csv`, gates, duration });
  const wave = () => files.insist({ kind: "wave", fileName: `${stem}-wave.wav`, gates, duration });
  return (
    <div className={styles.player}>
      <Button disabled={disabled} onClick={csv}>
        Gate schedule (CSV)
      </Button>
      <Button disabled={disabled} onClick={wave}>
        Gate wave (WAV)
      </Button>
      <FollowedProgress store={files.progress} label="Writing the file" onCancel={files.cancel} />
      <p className={styles.caution}>
        <strong>Caution.</strong> A schedule drives lethal apparatus. The limits of each coil are already in
        it, but no file stops a fault: keep the hardware's own limiter and a dead-man switch in the line, keep
        people outside the barrier, and follow local codes and licensed practice.
      </p>
    </div>
  );
}
