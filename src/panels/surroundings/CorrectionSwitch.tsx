import { resultEntry, resultValue } from "../../evaluation/register/register";
import { formatQuantity } from "../../units/format";
import { useEvaluation, useUnitSystem } from "../../workbench/session/hooks";
import { DesignField } from "../parts/DesignField";
import styles from "./CorrectionSwitch.module.css";

interface CorrectionSwitchProps {
  name: "former" | "floorConducts" | "wireCurrent";
  /** id of the result that tells its size */
  shift: string;
}

/** A correction of the model, with what it does to the secondary's resonance, on or off. */
export function CorrectionSwitch({ name, shift }: CorrectionSwitchProps) {
  const value = useEvaluation((evaluation) => resultValue(evaluation, shift));
  const system = useUnitSystem();
  const size = formatQuantity(value === null ? null : Math.abs(value), "percent", system, 2).text;
  const way = (value ?? 0) < 0 ? "lowers" : "raises";
  return (
    <div className={styles.correction}>
      <DesignField path={`corrections.${name}`} />
      <p className={styles.size} title={resultEntry(shift).words}>
        {value === null ? "size not computed yet" : `${way} f₁ by ${size}`}
      </p>
    </div>
  );
}
