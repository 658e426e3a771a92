import { withValueAt } from "../../design/changeAt";
import type { LineUpCandidate } from "../../design/show";
import { numberField } from "../../fields/allFields";
import { QuantityField } from "../../ui/QuantityField";
import { useUnitSystem } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { meaningRefusal } from "../parts/meaning";
import { placeInShow } from "../parts/places";
import { changed, withCandidates } from "./candidates";
import styles from "./LineUp.module.css";

/** The size of a candidate: every dimension of its elements. */
export function CandidateFields({ candidate }: { candidate: LineUpCandidate }) {
  const system = useUnitSystem();
  return (
    <div className={styles.fields}>
      {candidate.topLoad.elements.flatMap((element, index) =>
        Object.entries(element)
          .filter((entry): entry is [string, number] => typeof entry[1] === "number")
          .map(([key, value]) => {
            const field = numberField(`topLoad.elements.*.${key}`);
            const commit = (next: number | null, run?: string) =>
              workbench.editShow(
                `${field.label} of ${candidate.name}`,
                withCandidates(
                  changed(
                    candidate.id,
                    withValueAt(candidate.topLoad, `elements.${index}.${key}`, next ?? value),
                  ),
                ),
                run,
              );
            return (
              <QuantityField
                key={`${index} ${key}`}
                label={field.label}
                help={field.help}
                value={value}
                usual={field.default}
                dimension={field.dimension}
                system={system}
                refuse={(typed) => meaningRefusal(field, typed, system)}
                place={placeInShow(`lineUp.${candidate.id}.${index}.${key}`)}
                onCommit={commit}
              />
            );
          }),
      )}
    </div>
  );
}
