import { firstLanes } from "../calc/music/firstLanes";
import type { Coil } from "../calc/music/lane";
import { type MidiReading, midiScore } from "../calc/music/midiScore";
import { type Gates, scheduleCsv } from "../calc/music/scheduleCsv";
import { type ScheduleSummary, scheduleSummary } from "../calc/music/scheduleSummary";
import { defaultArrangement } from "../design/arrangement";
import { MOST_SCORE_BYTES } from "../design/fileLimits";
import { unpackScore } from "../design/scoreFile";
import type { Show } from "../design/show";
import { type ArrangedScore, playCoil } from "../evaluation/score/playedCoil";
import { scoreFindingMessage } from "../evaluation/score/scoreFindings";
import { type Answer, oneLine } from "./evaluateCommand";
import { type CoilDesigns, coilsOf, readDocument } from "./readDocument";
import { readInput } from "./readInput";

const USAGE = "Usage: npm run --silent schedule -- score.mid left.json [right.json] | show.json";

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
  return [
    counts,
    ...summary.reasons.map(
      ({ reason, notes }) => `${coil}: ${reason}: ${notes} note${notes === 1 ? "" : "s"}`,
    ),
  ];
}

function scheduled(arranged: ArrangedScore, designs: CoilDesigns): Answer {
  const complaints = [...arranged.score.reports];
  const silent = arranged.lanes.filter((lane) => lane.coil === "none").length;
  if (silent > 0) complaints.push(`${silent} parts go to no coil and are not played`);
  const gates: Gates = {};
  for (const coil of ["left", "right"] as const) {
    const design = designs[coil];
    if (!design) continue;
    const played = playCoil(arranged, coil, design);
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

/** The gate schedule of a score for one or two coils, as CSV; changes to its notes are listed as complaints. */
export function scheduleCommand(given: string[]): Answer {
  const misuse = misused(given);
  if (misuse) return refused(misuse);
  const [scoreFile, ...designFiles] = given;
  const reading = readScore(scoreFile);
  if (!reading.ok) return refused(`${scoreFile}: ${reading.message}`);
  const designs: CoilDesigns = {};
  for (const [index, file] of designFiles.entries()) {
    const read = readDocument(file);
    if (read.kind === "refused") return refused(...read.faults.map((fault) => `${file}: ${fault.message}`));
    if (read.kind === "show")
      return refused(`${file}: this is a show, which brings its own score: name it alone. ${USAGE}`);
    designs[index === 0 ? "left" : "right"] = read.design;
  }
  const { score } = reading;
  const lanes = firstLanes(score, designs.right !== undefined);
  return scheduled({ score, lanes, arrangement: defaultArrangement }, designs);
}

/** The gate schedule of a show with its own score, lanes and limits, printed as with separate files. */
export async function scheduleShow(file: string): Promise<Answer> {
  const read = readDocument(file);
  if (read.kind === "refused") return refused(...read.faults.map((fault) => `${file}: ${fault.message}`));
  if (read.kind === "design") return refused(`${file}: this is a design, and no score is named. ${USAGE}`);
  const { show, scoreFile } = read;
  if (!scoreFile) return refused(`${file}: ${withoutScore(show)}`);
  const unpacked = await unpackScore(scoreFile);
  const reading = unpacked.ok ? midiScore(unpacked.bytes) : unpacked;
  if (!reading.ok) return refused(`${file}: ${reading.message}`);
  const { lanes, arrangement } = show;
  return scheduled({ score: reading.score, lanes, arrangement }, coilsOf(show));
}

function withoutScore({ score }: Show): string {
  if (!score) return "this show has no score: open one in the workbench and export the show again.";
  return `the score “${score.fileName}” is named and its bytes are not enclosed: open it in the workbench and export the show again.`;
}

/** Whether the arguments ask for a show instead of a score and its designs. */
export function asksForShow(given: string[]): boolean {
  return given.length === 1 && /\.json$/i.test(given[0]);
}
