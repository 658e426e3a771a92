/**
 * All results of a design, in SI units. They are never saved and never edited.
 * A result's id is its dotted path here. A group that cannot be solved is null, with an error finding.
 */
import type { ResponseResult } from "../calc/circuit/response";
import type { BankResult, TankResult } from "./bank/bankResults";
import type { BurstGroup } from "./burst/burstResults";
import type { CouplingResult } from "./coupling/couplingResults";
import type { CurrentLimitResult } from "./currentLimit/currentLimitResults";
import type { Finding } from "./findings/finding";
import type { LossesResult } from "./losses/lossesResults";
import type { PrimaryResult } from "./primary/primaryResults";
import type { CorrectionsResult, SecondaryResult } from "./secondary/secondaryResults";
import type { SupplyResult } from "./supply/supplyResults";
import type { SwitchesResult } from "./switches/switchesResults";
import type { TopLoadResult } from "./topLoad/topLoadResults";
import type { TuningResult } from "./tuning/tuningResults";

/** Results of the drive at rest and with bursts; the latter are null without a burst. */
export type DriveResult = SupplyResult & SwitchesResult & CurrentLimitResult;

/** The first group of a reply: the results that numbers and drawing show, within a frame. */
export interface FieldEvaluation {
  secondary: SecondaryResult | null;
  topLoad: TopLoadResult | null;
  primary: PrimaryResult | null;
  coupling: CouplingResult | null;
  tank: BankResult | null;
  tuning: TuningResult | null;
  losses: LossesResult | null;
}

/** The second group: response, burst, the load on the parts, and findings, by the next frame. */
export interface DriveEvaluation {
  response: ResponseResult | null;
  burst: BurstGroup | null;
  tank: TankResult | null;
  drive: DriveResult | null;
  corrections: CorrectionsResult | null;
  findings: Finding[];
}

export type Evaluation = Omit<FieldEvaluation, keyof DriveEvaluation> & DriveEvaluation;

/** The results that the rules judge. */
export type Judged = Omit<Evaluation, "findings">;
