/** What a pair's numbers mean, a sentence each. */
import type { Show } from "../../../design/show";
import type { CoilBeside, PairResult } from "../../../evaluation/pair/pairResults";
import type { Dimension } from "../../../units/dimension";
import { formatQuantity } from "../../../units/format";
import type { UnitSystem } from "../../../units/unitSystem";

type Text = (value: number, dimension: Dimension, digits?: number) => string;

function texts(system: UnitSystem): Text {
  return (value, dimension, digits = 3) => formatQuantity(value, dimension, system, digits).text;
}

function besideSentence(name: string, coil: CoilBeside, phase: Show["phase"], text: Text): string {
  const { resonance, resonanceBeside, suggestedTap, retunedTap } = coil;
  const moved = `The ${name} coil resonates at ${text(resonance, "frequency", 5)} alone and at ${text(resonanceBeside, "frequency", 5)} with the other at the same voltage, ${phase}`;
  if (suggestedTap === null || retunedTap === null) return `${moved}; its primary cannot be tuned to both.`;
  return `${moved}; its tap for the same aim goes from ${text(suggestedTap, "turns", 4)} to ${text(retunedTap, "turns", 4)}.`;
}

/** A voltage as a part of the breakout voltage, or as so many times it. */
function ofBreakout(part: number, text: Text): string {
  return part < 2
    ? `${text(part, "percent")} of its breakout voltage`
    : `${text(part, "ratio", 2)} times its breakout voltage`;
}

/** What one coil's burst leaves in the other, which is idle. */
function inducedSentence(name: string, other: string, { induced }: CoilBeside, text: Text): string {
  if (!induced) return `The ${other} coil has no burst, and what it induces in the ${name} is not known.`;
  const { voltage, partOfBreakout, baseCurrent, primaryVoltage, bound } = induced;
  const primary = primaryVoltage === null ? "" : ` and ${text(primaryVoltage, "voltage")} across its primary`;
  const most = bound ? "at most " : "";
  const effect = `A burst of the ${other} coil raises the idle ${name} coil to ${most}${text(voltage, "voltage")} at its top, ${ofBreakout(partOfBreakout, text)}, with ${text(baseCurrent, "current")} at its base${primary}`;
  const reaction = bound
    ? " So much that it reacts on the burst, which is left out: an upper bound, at close spacing several times too high."
    : "";
  return partOfBreakout < 1
    ? `${effect}.${reaction}`
    : `${effect}: it can break out by itself. Treat both coils as live whenever either plays.${reaction}`;
}

function sparkSentence({ gap, sparkReach }: PairResult, text: Text): string {
  const reach = `The sparks that both designs are made for reach ${text(sparkReach, "length")} together, the gap is ${text(gap, "length")}:`;
  return sparkReach < gap
    ? `${reach} they do not meet, if the estimates hold.`
    : `${reach} they can meet, and one coil can feed the other. Stand them farther apart.`;
}

/** In order: coupling, split, each coil's shift and tap, what is induced, voltage over the gap, sparks. */
export function pairSentences(pair: PairResult, phase: Show["phase"], system: UnitSystem): string[] {
  const text = texts(system);
  const { coupling, split, left, right, gap, voltageBetween, meanField } = pair;
  return [
    `The charges couple the coils by ${text(coupling.capacitive, "percent")}, the flux by ${text(coupling.magnetic, "percent")}: charges above zero and flux below it both raise the resonance in phase.`,
    `Together they resonate at ${text(split.inPhase, "frequency", 5)} in phase and at ${text(split.opposed, "frequency", 5)} opposed.`,
    besideSentence("left", left, phase, text),
    besideSentence("right", right, phase, text),
    inducedSentence("left", "right", left, text),
    inducedSentence("right", "left", right, text),
    `The left top load breaks out at ${text(left.breakoutVoltage, "voltage")}, the right at ${text(right.breakoutVoltage, "voltage")}, at their points where they have one.`,
    `With both at the crest of their bursts, ${text(left.topVoltage, "voltage")} and ${text(right.topVoltage, "voltage")}, ${phase}, ${text(voltageBetween, "voltage")} stand across the gap of ${text(gap, "length")}: ${text(meanField, "fieldStrength")} in the mean.`,
    sparkSentence(pair, text),
  ];
}
