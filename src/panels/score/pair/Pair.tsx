import { useEffect } from "react";
import { useStore } from "zustand";
import type { PairOutcome } from "../../../evaluation/pair/pairResults";
import { FollowedProgress } from "../../../ui/FollowedProgress";
import type { PairRequest } from "../../../workbench/background/pairJob";
import { pairTask } from "../../../workbench/background/pairSession";
import { useShow, useUnitSystem } from "../../../workbench/session/hooks";
import { NotThere } from "../../parts/NotThere";
import { Part } from "../Part";
import styles from "./Pair.module.css";
import { PairCoils } from "./PairCoils";
import { PairDrawing } from "./PairDrawing";
import { PairFigures } from "./PairFigures";
import { pairSentences } from "./pairSentences";

/** The outcome for what is set now; null while it is made, or where it came to none. */
function usePair({ left, right, spacing, phase }: PairRequest) {
  useEffect(() => pairTask.ask({ left, right, spacing, phase }), [left, right, spacing, phase]);
  const { result, request, computing } = useStore(pairTask.answer);
  const current =
    request?.left === left &&
    request.right === right &&
    request.spacing === spacing &&
    request.phase === phase;
  return { outcome: current ? result : null, computing };
}

function Outcome({ outcome, phase }: { outcome: PairOutcome; phase: PairRequest["phase"] }) {
  const system = useUnitSystem();
  if (!outcome.ok) return <p role="alert">{outcome.message}</p>;
  return (
    <>
      <PairFigures pair={outcome.pair} />
      <ul className={styles.sentences}>
        {pairSentences(outcome.pair, phase, system).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}

function PairOf(request: PairRequest) {
  const system = useUnitSystem();
  const { outcome, computing } = usePair(request);
  const { left, right, spacing } = request;
  return (
    <>
      <PairDrawing left={left} right={right} spacing={spacing} system={system} />
      {outcome && <Outcome outcome={outcome} phase={request.phase} />}
      {!outcome && <NotThere what="the pair" computing={computing} again={() => pairTask.insist(request)} />}
      <FollowedProgress
        store={pairTask.progress}
        label="Computation of the pair"
        onCancel={pairTask.cancel}
      />
      <p className={styles.note}>
        Both windings run in the same sense, walls and ceiling are left out, and the coupling is of first
        order: its error grows as its square. What is induced takes the other coil's bridge as off and gives
        nothing back. Breakout and spark length are estimates, not limits of safety.
        <strong> Caution.</strong> Either coil can strike the other's ground, its audience and its operator:
        the barrier stands outside of what both can reach. Follow local codes and licensed practice.
      </p>
    </>
  );
}

/** Two coils side by side. */
export function Pair() {
  const { left, right, spacing, phase } = useShow((show) => ({
    left: show.designs[show.left],
    right: show.right === null ? null : show.designs[show.right],
    spacing: show.spacing,
    phase: show.phase,
  }));
  return (
    <Part title="The pair of coils">
      <PairCoils />
      {right ? (
        <PairOf left={left} right={right} spacing={spacing} phase={phase} />
      ) : (
        <p>Choose a design as the right coil: the left coil's own for a copy of it.</p>
      )}
    </Part>
  );
}
