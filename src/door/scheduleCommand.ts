import { firstLanes } from "../calc/music/firstLanes";
import type { Coil } from "../calc/music/lane";
import { type MidiReading, midiScore } from "../calc/music/midiScore";
import { type Gates, scheduleCsv } from "../calc/music/scheduleCsv";
import { type ScheduleSummary, scheduleSummary } from "../calc/music/scheduleSummary";
import type { Score } from "../calc/music/score";
import { defaultArrangement } from "../design/arrangement";
import type { Design } from "../design/design";
import { MOST_SCORE_BYTES } from "../design/fileLimits";
import { playCoil } from "../evaluation/playedCoil";
import { scoreFindingMessage } from "../evaluation/scoreFindings";
import { type Answer, oneLine } from "./evaluateCommand";
import { readDesign } from "./evaluateFile";
import { readInput } from "./readInput";

const USAGE = "Usage: npm run --silent schedule -- score.mid left.json [right.json]";

const CAUTION =
  "caution: the limits in the gate are computed, not measured. Keep the hardware's own limiter and a dead-man switch in the line, and follow local codes and licensed practice";

function refused(...complaints: string[]): Answer {
  return { exitCode: 2, output: "", complaints: complaints.map(oneLine) };
}

function misused(given: string[]): string | null {
  const option = given.find((argument) => argument.startsWith("-"));
  if (option) return `The option ${option} is not known. ${USAGE}`;
  if (given.length === 0) return `No score is named. ${USAGE}`;
  if (given.length === 1) return `No design is named. ${USAGE}`;
  return given.length > 3 ? `A score plays on two designs at most. ${USAGE}` : null;
}

function readScore(file: string): MidiReading {
  const read = readInput(file, MOST_SCORE_BYTES);
  return read.ok ? midiScore(read.bytes) : read;
}

function summaryLines(coil: Coil, summary: ScheduleSummary): string[] {
  const { played, shortened, dropped } = summary.fates;
  const counts = `${coil}: ${summary.pulses} pulses; notes: ${played} played, ${shortened} shortened, ${dropped} dropped`;
  return [counts, ...summary.reasons.map(({ reason, notes }) => `${coil}: ${reason}: ${notes} notes`)];
}

function scheduled(score: Score, designs: Partial<Record<Coil, Design>>): Answer {
  const lanes = firstLanes(score, designs.right !== undefined);
  const complaints = [...score.reports];
  const silent = lanes.filter((lane) => lane.coil === "none").length;
  if (silent > 0) complaints.push(`${silent} parts are not played: percussion, or without notes`);
  const gates: Gates = {};
  for (const coil of ["left", "right"] as const) {
    const design = designs[coil];
    if (!design) continue;
    const played = playCoil({ score, lanes, arrangement: defaultArrangement }, coil, design);
    if (!played) continue;
    complaints.push(...summaryLines(coil, scheduleSummary(played.schedule)));
    complaints.push(
      ...played.findings.map((finding) => `${coil}: ${scoreFindingMessage(finding, "metric")}`),
    );
    gates[coil] = played.schedule.gate;
  }
  complaints.push(CAUTION);
  return { exitCode: 0, output: scheduleCsv(gates), complaints: complaints.map(oneLine) };
}

/** The gate schedule of a score for one coil or two, as CSV; what was changed as complaints. */
export function scheduleCommand(given: string[]): Answer {
  const misuse = misused(given);
  if (misuse) return refused(misuse);
  const [scoreFile, ...designFiles] = given;
  const reading = readScore(scoreFile);
  if (!reading.ok) return refused(`${scoreFile}: ${reading.message}`);
  const designs: Partial<Record<Coil, Design>> = {};
  for (const [index, file] of designFiles.entries()) {
    const read = readDesign(file);
    if (!read.ok) return refused(...read.faults.map((fault) => `${file}: ${fault.message}`));
    designs[index === 0 ? "left" : "right"] = read.design;
  }
  return scheduled(reading.score, designs);
}
