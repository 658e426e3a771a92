import { resultEntry, resultValue } from "../../evaluation/register/register";
import { formatQuantity } from "../../units/format";
import { useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { Panel } from "../parts/Panel";
import styles from "./CorrectionSwitch.module.css";

interface CorrectionSwitchProps {
  name: "former" | "floorConducts" | "wireCurrent";
  /** id of the result that gives its size */
  shift: string;
}

/** A switch for a correction of the model, with its effect on the secondary's resonance. */
function CorrectionSwitch({ name, shift }: CorrectionSwitchProps) {
  const value = useEvaluation((evaluation) => resultValue(evaluation, shift));
  const system = useUnitSystem();
  const size = formatQuantity(value === null ? null : Math.abs(value), "percent", system, 2).text;
  const effect = (value ?? 0) < 0 ? "lowers" : "raises";
  return (
    <div className={styles.correction}>
      <DesignField path={`corrections.${name}`} />
      <p className={styles.size} title={resultEntry(shift).words}>
        {value === null ? "effect not computed yet" : `${effect} f₁ by ${size}`}
      </p>
    </div>
  );
}

export function SurroundingsPanel() {
  return (
    <Panel title="Room and model">
      <Group title="Room">
        <DesignField path="room.ceilingHeight" />
        <DesignField path="room.ceilingConducts" />
        <DesignField path="room.wallDistance" />
        <DesignField path="room.wallConducts" />
        <DesignField path="room.audienceDistance" wide />
      </Group>
      <Group title="Air">
        <DesignField path="air.temperature" />
        <DesignField path="air.pressure" />
      </Group>
      <Group title="Model corrections">
        <CorrectionSwitch name="former" shift="corrections.formerShift" />
        <CorrectionSwitch name="floorConducts" shift="corrections.floorShift" />
        <CorrectionSwitch name="wireCurrent" shift="corrections.wireCurrentShift" />
        <DesignField path="corrections.lossAllowance" />
      </Group>
    </Panel>
  );
}
