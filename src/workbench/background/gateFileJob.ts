/** The job of the worker that writes gate files. */
import { gateWave } from "../../calc/music/gateWave";
import { type Gates, scheduleCsvPieces } from "../../calc/music/scheduleCsv";
import type { Tell } from "./protocol";

export interface GateFileRequest {
  kind: "schedule" | "wave";
  fileName: string;
  gates: Gates;
  /** s */
  duration: number;
}

const SAMPLE_RATE = 48_000;

/** The file's content as a blob, which is not copied before it is saved. */
export function gateFileJob(
  { kind, gates, duration }: GateFileRequest,
  { progress }: Pick<Tell<never>, "progress">,
): Blob {
  if (kind === "schedule") return new Blob(scheduleCsvPieces(gates, progress), { type: "text/csv" });
  return new Blob([gateWave(gates, duration, SAMPLE_RATE)], { type: "audio/wav" });
}
