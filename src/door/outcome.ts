import type { Coil } from "../calc/music/lane";
import type { Fault } from "../design/document";
import type { Evaluation } from "../evaluation/evaluation";
import type { Finding } from "../evaluation/findings/finding";

/** An evaluation as printed: every finding has its sentence in SI units. */
export type PrintedEvaluation = Omit<Evaluation, "findings"> & {
  findings: (Omit<Finding, "sentence"> & { message: string })[];
};

/** The outcome of one file, or of one coil of a show's file. */
export type Outcome =
  | { file: string; coil?: Coil; evaluation: PrintedEvaluation }
  | { file: string; faults: Fault[] }
  | { file: string; failure: string };
