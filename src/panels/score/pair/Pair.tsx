import { useEffect } from "react";
import { useStore } from "zustand";
import type { PairOutcome } from "../../../evaluation/pair/pairResults";
import { FollowedProgress } from "../../../ui/FollowedProgress";
import type { PairRequest } from "../../../workbench/background/pairJob";
import { pairTask } from "../../../workbench/background/pairSession";
import { useShow, useUnitSystem } from "../../../workbench/session/hooks";
import { NoResult } from "../../parts/NoResult";
import { Part } from "../Part";
import styles from "./Pair.module.css";
import { PairCoils } from "./PairCoils";
import { PairDrawing } from "./PairDrawing";
import { PairFigures } from "./PairFigures";
import { pairSentences } from "./pairSentences";

/** The outcome for the present request; null while it is computed, or if that was cancelled or failed. */
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

function PairContent(request: PairRequest) {
  const system = useUnitSystem();
  const { outcome, computing } = usePair(request);
  const { left, right, spacing } = request;
  return (
    <>
      <PairDrawing left={left} right={right} spacing={spacing} system={system} />
      {outcome && <Outcome outcome={outcome} phase={request.phase} />}
      {!outcome && <NoResult what="the pair" computing={computing} again={() => pairTask.insist(request)} />}
      <FollowedProgress
        store={pairTask.progress}
        label="Computation of the pair"
        onCancel={pairTask.cancel}
      />
      <p className={styles.note}>
        Both windings have the same sense, walls and ceiling are neglected, and the coupling is of first
        order: its error grows as its square. Induced values assume that the other coil's bridge is off and
        that there is no reaction. Breakout and spark length are estimates, not safety limits.
        <strong> Caution.</strong> Either coil can strike the other's ground, its audience and its operator:
        the barrier must be outside the reach of both. Follow local codes and licensed practice.
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
        <PairContent left={left} right={right} spacing={spacing} phase={phase} />
      ) : (
        <p>Choose a design for the right coil; for two equal coils, choose the left coil's design.</p>
      )}
    </Part>
  );
}
