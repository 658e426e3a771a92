/** A pair's results in words, one sentence each. */
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
  const moved = `The ${name} coil resonates at ${text(resonance, "frequency", 5)} alone and at ${text(resonanceBeside, "frequency", 5)} with the other coil at the same voltage, ${phase}`;
  if (suggestedTap === null || retunedTap === null) return `${moved}; its primary cannot be tuned to both.`;
  return `${moved}; its tap for the same aim moves from ${text(suggestedTap, "turns", 4)} to ${text(retunedTap, "turns", 4)}.`;
}

/** A voltage as a percentage or as a multiple of the breakout voltage. */
function ofBreakout(part: number, text: Text): string {
  return part < 2
    ? `${text(part, "percent")} of its breakout voltage`
    : `${text(part, "ratio", 2)} times its breakout voltage`;
}

/** The effect of one coil's burst on the other, idle coil. */
function inducedSentence(name: string, other: string, { induced }: CoilBeside, text: Text): string {
  if (!induced) return `The ${other} coil has no burst, so what it induces in the ${name} coil is unknown.`;
  const { voltage, partOfBreakout, baseCurrent, primaryVoltage, bound } = induced;
  const primary = primaryVoltage === null ? "" : ` and ${text(primaryVoltage, "voltage")} across its primary`;
  const most = bound ? "at most " : "";
  const effect = `A burst of the ${other} coil raises the idle ${name} coil to ${most}${text(voltage, "voltage")} at its top, ${ofBreakout(partOfBreakout, text)}, with ${text(baseCurrent, "current")} at its base${primary}`;
  const reaction = bound
    ? " This would react on the burst, which is neglected: it is an upper bound, several times too high at close spacing."
    : "";
  return partOfBreakout < 1
    ? `${effect}.${reaction}`
    : `${effect}: it can break out by itself. Treat both coils as live whenever either plays.${reaction}`;
}

function sparkSentence({ gap, sparkReach }: PairResult, text: Text): string {
  const reach = `The design spark lengths of both coils add up to ${text(sparkReach, "length")}, and the clearance is ${text(gap, "length")}:`;
  return sparkReach < gap
    ? `${reach} the sparks do not meet, if the estimates hold.`
    : `${reach} the sparks can meet, and one coil can feed the other. Increase the spacing.`;
}

/** In order: coupling, split, each coil's shift and tap, induced voltages, voltage across the clearance, sparks. */
export function pairSentences(pair: PairResult, phase: Show["phase"], system: UnitSystem): string[] {
  const text = texts(system);
  const { coupling, split, left, right, gap, voltageBetween, meanField } = pair;
  return [
    `The capacitive coupling of the coils is ${text(coupling.capacitive, "percent")}, the magnetic coupling ${text(coupling.magnetic, "percent")}: positive capacitive and negative magnetic coupling both raise the in-phase resonance.`,
    `The pair resonates at ${text(split.inPhase, "frequency", 5)} in phase and at ${text(split.opposed, "frequency", 5)} opposed.`,
    besideSentence("left", left, phase, text),
    besideSentence("right", right, phase, text),
    inducedSentence("left", "right", left, text),
    inducedSentence("right", "left", right, text),
    `The left top load breaks out at ${text(left.breakoutVoltage, "voltage")}, the right at ${text(right.breakoutVoltage, "voltage")}, each at its breakout point if it has one.`,
    `With both at the crest of their bursts, ${text(left.topVoltage, "voltage")} and ${text(right.topVoltage, "voltage")}, ${phase}, the voltage across the clearance of ${text(gap, "length")} is ${text(voltageBetween, "voltage")}: ${text(meanField, "fieldStrength")} on average.`,
    sparkSentence(pair, text),
  ];
}
