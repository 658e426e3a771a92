import type { LineUpCandidate } from "../../design/show";
import { resultEntry, resultValue } from "../../evaluation/register/register";
import { Button } from "../../ui/Button";
import { formatQuantity } from "../../units/format";
import type { CandidateEvaluations } from "../../workbench/background/candidateEvaluations";
import { useUnitSystem } from "../../workbench/session/hooks";
import { workbench } from "../../workbench/session/session";
import { CANDIDATE_STYLES, removed, toggledCurves, withCandidates } from "./candidates";
import styles from "./LineUp.module.css";
import { Silhouette, widestOf } from "./Silhouettes";

/** The compared results, by their ids. */
const ROWS = [
  "topLoad.capacitance",
  "secondary.resonance",
  "secondary.loadedResonance",
  "tuning.suggestedTap",
  "topLoad.breakoutVoltage",
  "coupling.circuit",
  "topLoad.outerDiameter",
  "topLoad.height",
  "topLoad.mass",
] as const;

interface ComparisonProps {
  candidates: readonly LineUpCandidate[];
  evaluations: CandidateEvaluations;
}

/** The name of a candidate beside a piece of its curves' line. */
function Key({ name, colour, dash }: { name: string; colour: string; dash?: string }) {
  return (
    <span className={styles.key}>
      <svg width="22" height="8" aria-hidden="true">
        <path d="M1 4H21" stroke={`var(${colour})`} strokeWidth="2.4" strokeDasharray={dash} />
      </svg>
      {name}
    </span>
  );
}

function CurvesBox({ id, name, shown }: Pick<LineUpCandidate, "id" | "name" | "shown">) {
  const toggle = () =>
    workbench.editShow(`${shown ? "hide" : "show"} curves of ${name}`, withCandidates(toggledCurves(id)));
  return (
    <label className={styles.curves}>
      <input type="checkbox" aria-label={`Curves of ${name}`} checked={shown} onChange={toggle} />
    </label>
  );
}

function Actions({ candidate }: { candidate: LineUpCandidate }) {
  return (
    <>
      <Button aria-label={`Use ${candidate.name}`} onClick={() => workbench.adoptTopLoad(candidate.topLoad)}>
        Use
      </Button>
      <Button
        kind="bare"
        aria-label={`Remove ${candidate.name}`}
        onClick={() => workbench.editShow(`remove ${candidate.name}`, withCandidates(removed(candidate.id)))}
      >
        Remove
      </Button>
    </>
  );
}

/** The candidates side by side, a column each. */
export function Comparison({ candidates, evaluations }: ComparisonProps) {
  const system = useUnitSystem();
  const widest = widestOf(candidates);
  return (
    <div className={styles.scroller}>
      <table className={styles.comparison}>
        <thead>
          <tr>
            <th scope="col">Top load</th>
            {candidates.map((candidate, index) => (
              <th scope="col" key={candidate.id}>
                <Key name={candidate.name} {...CANDIDATE_STYLES[index]} />
                <Silhouette candidate={candidate} widest={widest} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {ROWS.map((id) => {
            const entry = resultEntry(id);
            return (
              <tr key={id}>
                <th scope="row">{entry.label}</th>
                {candidates.map((candidate) => {
                  const evaluation = evaluations[candidate.id];
                  const value = evaluation ? resultValue(evaluation, id) : null;
                  return <td key={candidate.id}>{formatQuantity(value, entry.dimension, system).text}</td>;
                })}
              </tr>
            );
          })}
          <tr>
            <th scope="row">Curves on the chart</th>
            {candidates.map(({ id, name, shown }) => (
              <td key={id}>
                <CurvesBox id={id} name={name} shown={shown} />
              </td>
            ))}
          </tr>
          <tr>
            <th scope="row">Action</th>
            {candidates.map((candidate) => (
              <td key={candidate.id} className={styles.decide}>
                <Actions candidate={candidate} />
              </td>
            ))}
          </tr>
        </tbody>
      </table>
    </div>
  );
}
