import { useDeferredValue, useEffect, useMemo } from "react";
import { useStore } from "zustand";
import { Button } from "../../ui/Button";
import { FollowedProgress } from "../../ui/FollowedProgress";
import type { CoilDesigns } from "../../workbench/background/coilLoadsJob";
import type { CoilOutcomes } from "../../workbench/background/scoreJob";
import {
  cancelScheduling,
  dismissMessage,
  followScore,
  openScore,
  readingTask,
  scheduleAgain,
  scheduleScore,
  scoreStore,
  scoreTask,
} from "../../workbench/background/scoreSession";
import { useShow } from "../../workbench/session/hooks";
import { ArrangementFields } from "./ArrangementFields";
import { CoilScore } from "./CoilScore";
import { GateExport } from "./GateExport";
import { LanesTable } from "./LanesTable";
import { Live } from "./live/Live";
import { Player } from "./Player";
import { Pair } from "./pair/Pair";
import { TestPulses } from "./pattern/TestPulses";
import styles from "./Score.module.css";

function useCoilDesigns(): CoilDesigns {
  const { left, right } = useShow((show) => ({
    left: show.designs[show.left],
    right: show.right === null ? undefined : show.designs[show.right],
  }));
  return useMemo(() => (right ? { left, right } : { left }), [left, right]);
}

function OpenScore({ onOpen }: { onOpen: (file: File | undefined) => void }) {
  return (
    <label className={styles.open}>
      Open a Standard MIDI File, or drop it here
      <input
        type="file"
        accept=".mid,.midi,audio/midi"
        onChange={(event) => {
          onOpen(event.target.files?.[0]);
          event.target.value = "";
        }}
      />
    </label>
  );
}

/** Why a file was refused, and what is to be said of one that was opened. */
function Messages({ message, remark }: { message: string; remark: string }) {
  return (
    <>
      {message && (
        <div role="alert">
          <p>{message}</p>
          <Button kind="bare" icon="remove" onClick={dismissMessage}>
            Dismiss
          </Button>
        </div>
      )}
      {remark && (
        <p role="status" className={styles.line}>
          {remark}
        </p>
      )}
    </>
  );
}

interface PlayedProps {
  played: CoilOutcomes;
  /** a player belongs to one schedule */
  revision: number;
  designs: CoilDesigns;
  /** s */
  duration: number;
  stale: boolean;
  title: string;
}

/** What a gate schedule gives: to listen to, by coil, and as files. */
function Played({ played, revision, designs, duration, stale, title }: PlayedProps) {
  const gates = useMemo(() => ({ left: played.left?.gate, right: played.right?.gate }), [played]);
  return (
    <>
      <Player key={revision} gates={gates} duration={duration} leads />
      {(["left", "right"] as const).map((coil) => {
        const own = played[coil];
        const design = designs[coil];
        if (!own || !design) return null;
        const name = coil === "left" ? "Left" : "Right";
        return <CoilScore key={coil} name={name} played={own} duration={duration} design={design} />;
      })}
      <GateExport disabled={stale} gates={gates} duration={duration} title={title} />
    </>
  );
}

/** Opens a score, assigns its parts to the coils, and shows, plays and exports the result. */
export function Score() {
  const { kept, lanes, arrangement } = useShow((show) => ({
    kept: show.score,
    lanes: show.lanes,
    arrangement: show.arrangement,
  }));
  const designs = useCoilDesigns();
  const state = useStore(scoreStore);
  const { score, message, remark, scheduling, stale } = state;
  // lanes and schedules render at low priority, so that controls stay responsive
  const drawn = useDeferredValue(state);
  const { played, revision } = drawn;
  const outline = drawn.score?.outline;
  const bytesKey = kept?.bytesKey ?? null;
  useEffect(() => void followScore(bytesKey), [bytesKey]);
  const request = useMemo(
    () => (score && bytesKey ? { bytesKey, bytes: score.bytes, lanes, arrangement, designs } : null),
    [bytesKey, score, lanes, arrangement, designs],
  );
  useEffect(() => {
    if (request) scheduleScore(request);
    return cancelScheduling;
  }, [request]);
  const open = (file: File | undefined) => {
    if (file) void openScore(file, designs.right !== undefined);
  };
  return (
    <section
      className={styles.score}
      aria-label="Score"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        event.nativeEvent.stopImmediatePropagation();
        open(event.dataTransfer.files[0]);
      }}
    >
      <OpenScore onOpen={open} />
      <Messages message={message} remark={remark} />
      {kept && score && <h2 className={styles.heading}>{kept.fileName}</h2>}
      <FollowedProgress
        store={readingTask.progress}
        label="Reading the score"
        onCancel={readingTask.cancel}
      />
      {outline?.reports.map((report) => (
        <p key={report} className={styles.line}>
          {report}
        </p>
      ))}
      {outline && <LanesTable parts={outline.parts} lanes={lanes} />}
      {score && <ArrangementFields arrangement={arrangement} />}
      <FollowedProgress store={scoreTask.progress} label="Gate schedule" onCancel={cancelScheduling} />
      {stale && !scheduling && request && (
        <p role="status" className={styles.player}>
          {played
            ? "The schedule below is out of date: lanes or limits have changed."
            : "There is no gate schedule yet."}
          <Button onClick={() => scheduleAgain(request)}>{played ? "Reschedule" : "Schedule"}</Button>
        </p>
      )}
      {outline && played && (
        <Played
          played={played}
          revision={revision}
          designs={designs}
          duration={outline.duration}
          stale={stale}
          title={kept?.fileName.replace(/\.midi?$/i, "") ?? "score"}
        />
      )}
      <Live designs={designs} arrangement={arrangement} />
      <TestPulses designs={designs} />
      <Pair />
    </section>
  );
}
