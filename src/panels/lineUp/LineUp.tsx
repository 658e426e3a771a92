import { Button } from "../../ui/Button";
import { FollowedProgress } from "../../ui/FollowedProgress";
import { lineUpBatch, useCandidateEvaluations } from "../../workbench/background/candidateEvaluations";
import { useDesign, useShow, useUnitSystem } from "../../workbench/session/hooks";
import { AddCandidate } from "./AddCandidate";
import { CandidateFields } from "./CandidateFields";
import { Comparison } from "./Comparison";
import { named } from "./candidates";
import styles from "./LineUp.module.css";
import { LineUpChart } from "./LineUpChart";

/** Two to four top loads side by side on the open design. */
export function LineUp() {
  const design = useDesign((open) => open);
  const candidates = named(
    useShow((show) => show.lineUp.candidates),
    useUnitSystem(),
  );
  const { evaluations, cancelled, cancel, again } = useCandidateEvaluations(design, candidates);
  return (
    <div className={styles.lineUp}>
      <p className={styles.hint}>
        Compare top loads on this design; everything else stays unchanged. Start from a stock size and edit
        it.
      </p>
      <AddCandidate />
      <FollowedProgress store={lineUpBatch.progress} label="Comparison of top loads" onCancel={cancel} />
      {cancelled && (
        <p className={styles.unsolved} role="status">
          The comparison was cancelled; the values shown are out of date.{" "}
          <Button onClick={again}>Compute again</Button>
        </p>
      )}
      {candidates.length > 0 && (
        <>
          <Comparison candidates={candidates} evaluations={evaluations} />
          {candidates
            .filter(({ id }) => evaluations[id] === null)
            .map(({ id, name }) => (
              <p key={id} className={styles.unsolved}>
                <strong>{name}</strong> could not be computed on this design. Change its size, or{" "}
                <Button onClick={again}>compute again</Button>
              </p>
            ))}
          {candidates
            .filter(({ id }) => evaluations[id]?.secondary === null)
            .map(({ id, name }) => (
              <p key={id} className={styles.unsolved}>
                <strong>{name}</strong> has no solution on this design: it intersects the winding or another
                conductor, or the design itself has no solution. Change its size or raise it.
              </p>
            ))}
          <LineUpChart candidates={candidates} evaluations={evaluations} />
          {candidates.map((candidate) => (
            <section key={candidate.id} aria-label={`Size of ${candidate.name}`}>
              <h3 className={styles.name}>{candidate.name}</h3>
              <CandidateFields candidate={candidate} />
            </section>
          ))}
        </>
      )}
    </div>
  );
}
