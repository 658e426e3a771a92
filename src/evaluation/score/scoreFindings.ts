/** Findings about a score, as data; they belong to the score and are not saved. */
import type { CoilSchedule, NoteFate } from "../../calc/music/gateSchedule";
import type { ScoreQuantity, WorstMoment } from "../../calc/music/worstMoments";
import { formatQuantity } from "../../units/format";
import type { UnitSystem } from "../../units/unitSystem";
import type { Finding } from "../findings/finding";
import { SCORE_RESULTS } from "./scoreResults";

export interface ScoreFinding extends Omit<Finding, "sentence"> {
  /** s, of the worst moment; null for the whole score */
  time: number | null;
}

/** Share of a limit from which it is reported. */
const NEAR = 0.9;
/** Relative rounding error of sums along the score. */
const ROUNDING = 1e-9;

interface LimitRule {
  code: string;
  where: string;
  remedy: string;
}

const LIMITS: Partial<Record<ScoreQuantity, LimitRule>> = {
  duty: {
    code: "score-duty",
    where: "interrupter.dutyLimit",
    remedy: "shorten the full on-time or let fewer voices sound at once",
  },
  mainsCurrent: {
    code: "score-mains-current",
    where: "drive.supply.circuitCurrent",
    remedy:
      "shorten the full on-time, let fewer voices sound at once, or feed the coil from a stronger circuit",
  },
  busVoltage: {
    code: "score-bus-voltage",
    where: "drive.reservoirCapacitance",
    remedy: "enlarge the reservoir or shorten the full on-time",
  },
  junctionTemperature: {
    code: "score-junction",
    where: "drive.switch.caseTemperature",
    remedy: "cool the case better or shorten the full on-time",
  },
};

const SENTENCES: Record<string, string> = {
  near: "{quantity} comes near its limit: {value} of {limit}, {time} into the score.",
  passed: "{quantity} passes its limit: {value} where {limit} is allowed, {time} into the score.",
  "score-load-unknown":
    "The load of the bursts is unknown because the design has no solution: only the interrupter's limits are applied.",
  "score-notes-dropped": "{value} of {limit} notes do not sound.",
  "score-notes-shortened": "{value} of {limit} notes are shortened.",
};

function limitFinding({ quantity, value, limit, time, used }: WorstMoment): ScoreFinding[] {
  const rule = LIMITS[quantity];
  if (!rule || used === null || used < NEAR) return [];
  const passed = used > 1 + ROUNDING;
  const { code, where, remedy } = rule;
  return [
    {
      severity: passed ? "warning" : "note",
      code: passed ? `${code}-passed` : `${code}-near`,
      where,
      quantity: `score.${quantity}`,
      value,
      limit,
      remedy: passed ? remedy : "",
      time,
    },
  ];
}

function notesFinding(schedule: CoilSchedule, fate: NoteFate): ScoreFinding[] {
  const count = schedule.notes.filter((note) => note.fate === fate).length;
  if (count === 0) return [];
  return [
    {
      severity: fate === "dropped" ? "warning" : "note",
      code: `score-notes-${fate}`,
      where: fate === "dropped" ? "arrangement.voices" : "arrangement.onTime",
      quantity: "score.notes",
      value: count,
      limit: schedule.notes.length,
      remedy:
        fate === "dropped"
          ? "allow more voices, send parts to the other coil, or shorten the full on-time"
          : "shorten the full on-time, or leave it if the score still sounds right",
      time: null,
    },
  ];
}

const LOAD_UNKNOWN: ScoreFinding = {
  severity: "warning",
  code: "score-load-unknown",
  where: "primary.tap",
  quantity: "score.power",
  value: null,
  limit: null,
  remedy: "resolve the design's findings, then compute the schedule again",
  time: null,
};

const RANK = { error: 0, warning: 1, note: 2 };

/** Most severe first. */
export function scoreFindings(
  schedule: CoilSchedule,
  moments: readonly WorstMoment[],
  loadKnown: boolean,
): ScoreFinding[] {
  const found = [
    ...(loadKnown ? [] : [LOAD_UNKNOWN]),
    ...moments.flatMap(limitFinding),
    ...notesFinding(schedule, "dropped"),
    ...notesFinding(schedule, "shortened"),
  ];
  return found.sort((a, b) => RANK[a.severity] - RANK[b.severity]);
}

/** min:s of a time along the score. */
export function clock(time: number): string {
  return `${Math.floor(time / 60)}:${String(Math.floor(time % 60)).padStart(2, "0")}`;
}

function sentenceOf(code: string): string {
  if (code.endsWith("-near")) return SENTENCES.near;
  if (code.endsWith("-passed")) return SENTENCES.passed;
  return SENTENCES[code];
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The sentence of a score finding in the user's units, followed by the remedy. */
export function scoreFindingMessage(finding: ScoreFinding, system: UnitSystem): string {
  const entry = Object.values(SCORE_RESULTS).find(({ id }) => id === finding.quantity);
  const text = (value: number | null) =>
    formatQuantity(value, entry?.dimension ?? "count", system, entry ? 4 : 6).text;
  const filled = sentenceOf(finding.code)
    .replace("{quantity}", entry?.label ?? "")
    .replace("{value}", text(finding.value))
    .replace("{limit}", text(finding.limit))
    .replace("{time}", finding.time === null ? "" : clock(finding.time));
  return finding.remedy ? `${filled} ${capitalised(finding.remedy)}.` : filled;
}
