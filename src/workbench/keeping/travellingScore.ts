/** Exporting and importing the bytes of a score with its show. */
import { contentKey, packScore, type ScoreFile, unpackScore } from "../../design/scoreFile";
import type { Show } from "../../design/show";
import { keepBytes, keptBytes } from "./scoreBytes";

/** The score of a show as stored in its file; null if there is none or its bytes are not stored here. */
export async function scoreFileOf({ score }: Show): Promise<ScoreFile | null> {
  const bytes = score && (await keptBytes(score.bytesKey));
  return bytes ? packScore(Uint8Array.from(bytes)) : null;
}

type Unpacked = { ok: true; show: Show } | { ok: false; message: string };

/** Stores the bytes that came with a show, under the key that its score refers to. */
export async function withScoreKept(show: Show, scoreFile: ScoreFile | null): Promise<Unpacked> {
  if (!scoreFile || !show.score) return { ok: true, show };
  const unpacked = await unpackScore(scoreFile);
  if (!unpacked.ok) return unpacked;
  await keepBytes(scoreFile.sha256, unpacked.bytes);
  return { ok: true, show: { ...show, score: { ...show.score, bytesKey: scoreFile.sha256 } } };
}

/** An opened score with the key of its content. */
export interface OpenedScore {
  fileName: string;
  bytesKey: string;
  /** ids of its parts */
  parts: readonly string[];
}

/**
 * Whether an opened score is that of the show: by content or, if the show's own bytes are not stored here, by
 * name and parts.
 */
export async function isScoreOf({ score, lanes }: Show, opened: OpenedScore): Promise<boolean> {
  if (!score) return false;
  if (score.bytesKey === opened.bytesKey) return true;
  const bytes = await keptBytes(score.bytesKey);
  if (bytes) return (await contentKey(Uint8Array.from(bytes))) === opened.bytesKey;
  const ids = lanes.map(({ part }) => part);
  return score.fileName === opened.fileName && ids.join() === opened.parts.join();
}
