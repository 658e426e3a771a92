import type { TuningAim } from "../../calc/design-parts";
import { choiceField } from "../../fields/allFields";
import { ChoiceField } from "../../ui/ChoiceField";
import { useDesign } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { DesignField } from "../parts/DesignField";
import { Group } from "../parts/Group";
import { useRemarks } from "../parts/useRemarks";

const path = "tuningAim.kind";
const field = choiceField(path);

function aimOf(kind: TuningAim["kind"], sparkLength: number): TuningAim {
  return kind === "spark" ? { kind, length: sparkLength } : { kind };
}

/** The tuning aim; its length is shown only if the aim is a spark. */
export function AimGroup() {
  const kind = useDesign((design) => design.tuningAim.kind);
  const sparkLength = useDesign((design) => design.spark.length);
  return (
    <Group title="Tuning aim">
      <ChoiceField
        label={field.label}
        help={field.help}
        path={path}
        options={field.options}
        value={kind}
        remarks={useRemarks(path)}
        wide={kind !== "spark"}
        onCommit={(next) =>
          workbench.setValue("tuningAim", aimOf(next as TuningAim["kind"], sparkLength), field.label)
        }
      />
      {kind === "spark" && <DesignField path="tuningAim.length" />}
    </Group>
  );
}
