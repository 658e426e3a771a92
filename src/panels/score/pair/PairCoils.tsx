import type { Show } from "../../../design/show";
import { titleOf } from "../../../design/titleOf";
import { spacingField } from "../../../fields/showFields";
import { ChoiceField } from "../../../ui/ChoiceField";
import { useShow } from "../../../workbench/session/hooks";
import { workbench } from "../../../workbench/session/session";
import { ScoreQuantity } from "../ScoreQuantity";
import styles from "./Pair.module.css";

const PHASES: Show["phase"][] = ["in phase", "opposed"];
const PHASE_HELP = {
  what: "Whether the two top voltages have the same or opposite polarity.",
  measure: "It follows from how the primaries are connected: swap the ends of one to change it.",
  typical: "In phase for coils that share an audience; common practice, no source.",
};

function Side({ side }: { side: "left" | "right" }) {
  const { designs, order, chosen } = useShow((show) => ({
    designs: show.designs,
    order: show.order,
    chosen: show[side],
  }));
  const choose = (id: string) => {
    const next = id === "" ? null : id;
    workbench.editShow("Choose coil", (show) =>
      side === "right" ? { ...show, right: next } : { ...show, left: next ?? show.left },
    );
  };
  return (
    <label className={styles.side}>
      {side === "left" ? "Left coil" : "Right coil"}
      <select value={chosen ?? ""} onChange={(event) => choose(event.target.value)}>
        {side === "right" && <option value="">none</option>}
        {order.map((id) => (
          <option key={id} value={id}>
            {titleOf(designs[id])}
          </option>
        ))}
      </select>
    </label>
  );
}

/** The designs of the left and right coil, their spacing and their phase. */
export function PairCoils() {
  const { spacing, phase } = useShow(({ spacing, phase }) => ({ spacing, phase }));
  return (
    <div className={styles.fields}>
      <Side side="left" />
      <Side side="right" />
      <ScoreQuantity
        field={spacingField}
        value={spacing}
        onCommit={(spacing, run) =>
          workbench.editShow(spacingField.label, (show) => ({ ...show, spacing }), run)
        }
      />
      <ChoiceField
        label="Phase of the top voltages"
        help={PHASE_HELP}
        options={PHASES}
        value={phase}
        onCommit={(value) => {
          const chosen = PHASES.find((each) => each === value);
          if (chosen) workbench.editShow("Change phase", (show) => ({ ...show, phase: chosen }));
        }}
      />
    </div>
  );
}
