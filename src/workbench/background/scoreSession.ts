/** The score on the stand: read, assigned to the coils, and scheduled in a worker. */
import { createStore } from "zustand/vanilla";
import { firstLanes } from "../../calc/music/firstLanes";
import { midiScore } from "../../calc/music/midiScore";
import type { Score } from "../../calc/music/score";
import { MOST_SCORE_BYTES, sizeRefusal } from "../../design/fileLimits";
import { contentKey } from "../../design/scoreFile";
import type { Show } from "../../design/show";
import { keepBytes, keptBytes } from "../keeping/scoreBytes";
import { session, workbench } from "../session";
import { isScoreOf } from "../travellingScore";
import { type PlayedCoils, type ScoreRequest, scoreJob } from "./scoreJob";
import { newTask } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startScore } from "./workers";

interface ScoreState {
  /** of the bytes that were read */
  bytesKey: string | null;
  score: Score | null;
  /** why a file could not be opened; empty where all is well */
  message: string;
  /** what is to be said of the score that was opened */
  remark: string;
  played: PlayedCoils | null;
  /** whether `played` belongs to lanes or limits that have changed since */
  stale: boolean;
  /** one higher with every schedule made */
  revision: number;
  /** while schedules are made */
  scheduling: boolean;
}

export const scoreStore = createStore<ScoreState>(() => ({
  bytesKey: null,
  score: null,
  message: "",
  remark: "",
  played: null,
  stale: false,
  revision: 0,
  scheduling: false,
}));

export const scoreTask = newTask<ScoreRequest, PlayedCoils>({
  what: "the making of the gate schedule",
  job: scoreJob,
  startWorker: startScore,
  grace: 0,
  report: reportTo(session.store),
  lastEdit: () => lastEditOf(session.store.getState()),
  listener: {
    result: (played) =>
      scoreStore.setState(({ revision }) => ({
        played,
        stale: false,
        revision: revision + 1,
        scheduling: false,
      })),
    trouble: () => scoreStore.setState({ scheduling: false }),
  },
});

/** Gives up what is under way; what was played before stays. */
export function cancelScheduling(): void {
  scoreTask.cancel();
  scoreStore.setState({ scheduling: false });
}

/** Makes the schedules anew; one that is under way gives way to the newer. */
export function scheduleScore(request: ScoreRequest): void {
  scoreStore.setState({ stale: true, scheduling: true });
  scoreTask.ask(request);
}

/** Opens a file as the score of the show, with a first assignment; a file that is none changes nothing. */
export async function openScore(file: File, pair: boolean): Promise<void> {
  const tooLong = sizeRefusal(file.size, MOST_SCORE_BYTES);
  if (tooLong) {
    scoreStore.setState({ message: `${file.name}: ${tooLong}`, remark: "" });
    return;
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  const reading = midiScore(bytes);
  if (!reading.ok) {
    scoreStore.setState({ message: `${file.name}: ${reading.message}`, remark: "" });
    return;
  }
  const kept = { fileName: file.name.slice(0, 300), bytesKey: await contentKey(bytes) };
  const parts = reading.score.parts.map(({ id }) => id);
  const same = await isScoreOf(session.store.getState().history.present, { ...kept, parts });
  await keepBytes(kept.bytesKey, bytes);
  const remark = same ? "The same score: its lanes were kept." : "";
  scoreStore.setState({ bytesKey: kept.bytesKey, score: reading.score, message: "", remark, played: null });
  workbench.editShow("Open score", (show: Show) => ({
    ...show,
    score: kept,
    lanes: same ? show.lanes : firstLanes(reading.score, pair),
  }));
}

/** Reads the kept bytes of the show's score where another is on the stand. */
export async function followScore(bytesKey: string | null): Promise<void> {
  if (scoreStore.getState().bytesKey === bytesKey) return;
  cancelScheduling();
  scoreStore.setState({ bytesKey, score: null, played: null, message: "", remark: "" });
  if (bytesKey === null) return;
  const bytes = await keptBytes(bytesKey);
  if (scoreStore.getState().bytesKey !== bytesKey) return;
  const reading = bytes ? midiScore(bytes) : null;
  if (reading?.ok) scoreStore.setState({ score: reading.score });
  else
    scoreStore.setState({
      message: "The notes of this show's score are not kept in this browser. Open its file again.",
    });
}
