import { useMemo, useState } from "react";
import { coilLimits } from "../../../calc/music/coilLimits";
import type { CoilLoad } from "../../../calc/music/coilLoad";
import type { Coil } from "../../../calc/music/lane";
import { type PatternGate, type PulsePattern, patternGate } from "../../../calc/music/pulsePattern";
import type { Design } from "../../../design/design";
import type { CoilDesigns } from "../../../workbench/background/coilLoadsJob";
import { CoilChoice } from "../CoilChoice";
import { GateExport } from "../GateExport";
import { NoLoads } from "../NoLoads";
import { Part } from "../Part";
import { Player } from "../Player";
import styles from "../Score.module.css";
import { ScoreQuantity } from "../ScoreQuantity";
import { useCoilLoads } from "../useCoilLoads";
import { patternFields } from "./patternFields";

const KEYS = ["pulses", "rate", "onTime", "pause", "groups"] as const;
const VOICES = 1;

const FIRST: PulsePattern = {
  pulses: patternFields.pulses.default ?? 1,
  rate: patternFields.rate.default ?? 1,
  onTime: patternFields.onTime.default ?? 0,
  pause: patternFields.pause.default ?? 0,
  groups: patternFields.groups.default ?? 1,
};

/** The number of pulses made of those requested, and the changes to the others. */
function outcomeText({ gate, asked, changed }: PatternGate): string {
  const changes = Object.entries(changed).map(([change, count]) => `${count} × ${change}`);
  const made = `${gate.starts.length} of ${asked} pulses`;
  return changes.length === 0 ? `${made}, as requested.` : `${made}: ${changes.join(", ")}.`;
}

interface LimitedPatternProps {
  pattern: PulsePattern;
  coil: Coil;
  design: Design;
  load: CoilLoad | null;
}

/** The pattern within the limits of one coil, to play and to export. */
function LimitedPattern({ pattern, coil, design, load }: LimitedPatternProps) {
  const made = useMemo(
    () => patternGate(pattern, coilLimits(design.interrupter, VOICES, load)),
    [pattern, design.interrupter, load],
  );
  const gates = useMemo(() => ({ [coil]: made.gate }), [coil, made]);
  const revision = JSON.stringify([coil, pattern, made.gate.starts.length]);
  return (
    <>
      <p role="status">{outcomeText(made)}</p>
      <Player key={revision} gates={gates} duration={made.duration} />
      <GateExport gates={gates} duration={made.duration} title="test pulses" disabled={false} />
    </>
  );
}

function TestContent({ designs }: { designs: CoilDesigns }) {
  const [coil, setCoil] = useState<Coil>("left");
  const [pattern, setPattern] = useState(FIRST);
  const loads = useCoilLoads(designs);
  const chosen = designs[coil] ? coil : "left";
  const design = designs[chosen];
  const load = loads?.[chosen];
  return (
    <>
      <p className={styles.line}>Groups of pulses with pauses, for the bench. Begin at low bus voltage.</p>
      <CoilChoice label="Coil under test" designs={designs} chosen={chosen} onChoose={setCoil} />
      <div className={styles.fields}>
        {KEYS.map((key) => (
          <ScoreQuantity
            key={key}
            field={patternFields[key]}
            value={pattern[key]}
            onCommit={(value) => setPattern({ ...pattern, [key]: value })}
          />
        ))}
      </div>
      {design && load !== undefined ? (
        <LimitedPattern pattern={pattern} coil={chosen} design={design} load={load} />
      ) : (
        <NoLoads designs={designs} />
      )}
    </>
  );
}

/** Test pulses for one coil. */
export function TestPulses({ designs }: { designs: CoilDesigns }) {
  return (
    <Part title="Test pulses">
      <TestContent designs={designs} />
    </Part>
  );
}
