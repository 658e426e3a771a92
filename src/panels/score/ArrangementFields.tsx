import type { Arrangement } from "../../design/arrangement";
import { arrangementFields } from "../../fields/showFields";
import { workbench } from "../../workbench/session/session";
import styles from "./Score.module.css";
import { ScoreQuantity } from "./ScoreQuantity";

const KEYS = ["onTime", "kneeRate", "pitchExponent", "voices"] as const;

/** The fields that turn notes into on-times; the interrupter's limits take precedence. */
export function ArrangementFields({ arrangement }: { arrangement: Arrangement }) {
  return (
    <div className={styles.fields}>
      {KEYS.map((key) => (
        <ScoreQuantity
          key={key}
          field={arrangementFields[key]}
          value={arrangement[key]}
          onCommit={(value, run) =>
            workbench.editShow(
              arrangementFields[key].label,
              (show) => ({ ...show, arrangement: { ...show.arrangement, [key]: value } }),
              run,
            )
          }
        />
      ))}
    </div>
  );
}
