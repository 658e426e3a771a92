/** The open score: read, assigned to the coils and scheduled in the background. */
import { createStore } from "zustand/vanilla";
import { MOST_SCORE_BYTES, sizeRefusal } from "../../design/fileLimits";
import { contentKey } from "../../design/scoreFile";
import type { Show } from "../../design/show";
import { keepBytes, keptBytes } from "../keeping/scoreBytes";
import { isScoreOf } from "../keeping/travellingScore";
import { session, workbench } from "../session/session";
import type { CoilOutcomes, ScoreRequest } from "./scoreJob";
import type { ScoreOutline, ScoreReading, ScoreReadingRequest } from "./scoreReadingJob";
import { newTask } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startScore, startScoreReading } from "./workers";

interface ScoreState {
  /** of the bytes that were read */
  bytesKey: string | null;
  /** the open score; null while it is read, and without one */
  score: { bytes: Uint8Array; outline: ScoreOutline } | null;
  /** why a file could not be opened; empty if there is no error */
  message: string;
  /** a remark about the score that was opened */
  remark: string;
  played: CoilOutcomes | null;
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

/** Removes the message. */
export function dismissMessage(): void {
  scoreStore.setState({ message: "" });
}

const ofSession = {
  report: reportTo(session.store),
  lastEdit: () => lastEditOf(session.store.getState()),
};

export const scoreTask = newTask<ScoreRequest, CoilOutcomes>({
  ...ofSession,
  what: "the computation of the gate schedule",
  startWorker: startScore,
  grace: 0,
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

/** Cancels the schedule in progress; the old one stays. */
export function cancelScheduling(): void {
  scoreTask.cancel();
  scoreStore.setState({ scheduling: false });
}

/** Parts of a show are never changed in place, so the same object has the same values. */
function isScheduled({ bytesKey, lanes, arrangement, designs }: ScoreRequest): boolean {
  const { request } = scoreTask.answer.getState();
  return (
    scoreStore.getState().played !== null &&
    request?.bytesKey === bytesKey &&
    request.lanes === lanes &&
    request.arrangement === arrangement &&
    request.designs.left === designs.left &&
    request.designs.right === designs.right
  );
}

/** Makes the schedules of this request unless they are there; a request in progress is replaced. */
export function scheduleScore(request: ScoreRequest): void {
  if (isScheduled(request)) {
    scoreStore.setState({ stale: false });
    return;
  }
  scoreStore.setState({ stale: true, scheduling: true });
  scoreTask.ask(request);
}

/** Makes the schedules that were cancelled or failed. */
export function scheduleAgain(request: ScoreRequest): void {
  scoreStore.setState({ stale: true, scheduling: true });
  scoreTask.insist(request);
}

/** A file that is opened has a name; stored bytes have a key. */
type Source = { fileName: string } | { bytesKey: string };

export const readingTask = newTask<ScoreReadingRequest & { source: Source }, ScoreReading>({
  ...ofSession,
  what: "the reading of the score",
  startWorker: startScoreReading,
  grace: 0,
  listener: {
    result(reading, { source, bytes }) {
      if ("bytesKey" in source) showStoredScore(source.bytesKey, bytes, reading);
      else void adoptScore(source.fileName, bytes, reading);
    },
  },
});

/** Makes an opened score the show's, with a first assignment; a file that is not a score changes nothing. */
async function adoptScore(fileName: string, bytes: Uint8Array, reading: ScoreReading): Promise<void> {
  if (!reading.ok) {
    scoreStore.setState({ message: `${fileName}: ${reading.message}`, remark: "" });
    return;
  }
  const kept = { fileName: fileName.slice(0, 300), bytesKey: await contentKey(new Uint8Array(bytes)) };
  const parts = reading.outline.parts.map(({ id }) => id);
  const same = await isScoreOf(session.store.getState().history.present, { ...kept, parts });
  await keepBytes(kept.bytesKey, bytes);
  const remark = same ? "The same score: its lanes were kept." : "";
  const score = { bytes, outline: reading.outline };
  scoreStore.setState(({ bytesKey, played }) => ({
    bytesKey: kept.bytesKey,
    score,
    message: "",
    remark,
    played: bytesKey === kept.bytesKey ? played : null,
  }));
  workbench.editShow("Open score", (show: Show) => ({
    ...show,
    score: kept,
    lanes: same ? show.lanes : reading.firstLanes,
  }));
}

const NOT_STORED = "The notes of this show's score are not stored in this browser. Open its file again.";

/** Shows the show's own score after it was read, unless another has replaced it. */
function showStoredScore(bytesKey: string, bytes: Uint8Array, reading: ScoreReading): void {
  if (scoreStore.getState().bytesKey !== bytesKey) return;
  if (reading.ok) scoreStore.setState({ score: { bytes, outline: reading.outline } });
  else scoreStore.setState({ message: NOT_STORED });
}

/** Opens a file as the score of the show. */
export async function openScore(file: File, pair: boolean): Promise<void> {
  const tooLong = sizeRefusal(file.size, MOST_SCORE_BYTES);
  if (tooLong) {
    scoreStore.setState({ message: `${file.name}: ${tooLong}`, remark: "" });
    return;
  }
  openScoreBytes(file.name, new Uint8Array(await file.arrayBuffer()), pair);
}

/** Opens bytes as the score of the show. */
function openScoreBytes(fileName: string, bytes: Uint8Array, pair: boolean): void {
  readingTask.insist({ bytes, pair, source: { fileName } });
}

/** Reads the stored bytes of the show's score unless it is open already. */
export async function followScore(bytesKey: string | null): Promise<void> {
  if (scoreStore.getState().bytesKey === bytesKey) return;
  cancelScheduling();
  scoreStore.setState({ bytesKey, score: null, played: null, message: "", remark: "" });
  if (bytesKey === null) return;
  const bytes = await keptBytes(bytesKey);
  if (scoreStore.getState().bytesKey !== bytesKey) return;
  if (bytes) readingTask.ask({ bytes, pair: false, source: { bytesKey } });
  else scoreStore.setState({ message: NOT_STORED });
}
