/** The one loud number parser of every field: it reads what is clear, asks where it is not, and guesses nothing. */
import { readArithmetic } from "./arithmetic";
import type { Dimension } from "./dimension";
import { preferredUnit, QUANTITIES, type Unit } from "./quantities";
import type { UnitSystem } from "./unitSystem";

export type ParsedQuantity =
  | { ok: true /** SI */; value: number }
  | { ok: false; message: string /** readings to choose from, each fit to be typed */; choices?: string[] };

const LONGEST_TEXT = 100;
const PREFIXES: Record<string, number> = {
  p: 1e-12,
  n: 1e-9,
  u: 1e-6,
  µ: 1e-6,
  μ: 1e-6,
  m: 1e-3,
  k: 1e3,
  K: 1e3,
  M: 1e6,
  G: 1e9,
};

/** `4n7` is 4.7 n: the prefix stands where the point would. */
const PREFIX_AS_POINT = /^(\d+)([pnuµμmkKMG])(\d+)([a-zA-ZΩ]*)$/;
/** One comma before exactly three digits may be a thousand or a decimal. */
const AMBIGUOUS_COMMA = /(?<![\d.,])([1-9]\d{0,2}),(\d{3})(?![\d.,])/;
const GAUGE = /^(?:awg\s*(\d{1,2}|[0-9]\/0|0{1,4})|(\d{1,2})\s*awg)$/i;
const FEET_AND_INCHES = /^(\d+)\s*(?:ft|'|′)\s*(\d+(?:[.,]\d+)?)\s*(?:in|"|″)?$/;

function unitsOf(dimension: Dimension): Unit[] {
  const { shown, typed = [] } = QUANTITIES[dimension];
  return [...shown.metric, ...shown.inch, ...typed];
}

function named(unit: Unit, text: string): boolean {
  return unit.symbol === text || (unit.spellings?.includes(text) ?? false);
}

/** The base unit as people without Ω on their keyboard write it. */
function plainUnit(text: string): string {
  return text
    .replace(/ohms?$/i, "Ω")
    .replace(/Ω/g, "Ω")
    .replace(/\s*\/\s*/g, "/")
    .replace("^2", "²")
    .trim();
}

/** The unit that stands behind a number, null where the dimension has none of that name. */
function findUnit(text: string, dimension: Dimension): Unit | null {
  const wanted = plainUnit(text);
  const exact =
    unitsOf(dimension).find((unit) => named(unit, wanted)) ??
    unitsOf(dimension).find((unit) => named(unit, wanted.toLowerCase()));
  if (exact) return exact;
  const { base, prefixes } = QUANTITIES[dimension];
  if (!prefixes) return null;
  if (wanted.toLowerCase() === base.toLowerCase()) return { symbol: base, factor: 1 };
  const factor = PREFIXES[wanted.charAt(0)];
  const rest = wanted.slice(1);
  if (factor === undefined || (rest !== "" && rest.toLowerCase() !== base.toLowerCase())) return null;
  return { symbol: wanted, factor };
}

/** ASTM B258: d = 0.127 mm · 92^((36 − n)/39); 0000 is n = −3. */
function gaugeDiameter(text: string): number | null {
  const match = GAUGE.exec(text);
  if (!match) return null;
  const name = match[1] ?? match[2];
  const aught = name.includes("/") ? Number(name[0]) : /^0+$/.test(name) ? name.length : 0;
  const number = aught > 0 ? 1 - aught : Number(name);
  return 0.127e-3 * 92 ** ((36 - number) / 39);
}

function feetAndInches(text: string): number | null {
  const match = FEET_AND_INCHES.exec(text);
  return match ? (Number(match[1]) * 12 + Number(match[2].replace(",", "."))) * 0.0254 : null;
}

/** Spellings that belong to one kind of quantity alone. */
function specialReading(text: string, dimension: Dimension): number | null {
  if (dimension === "wireDiameter") return gaugeDiameter(text);
  return dimension === "length" || dimension === "smallLength" ? feetAndInches(text) : null;
}

function unitList(dimension: Dimension): string {
  const symbols = [
    ...new Set(
      unitsOf(dimension)
        .map((unit) => unit.symbol)
        .filter(Boolean),
    ),
  ];
  return symbols.length > 0 ? `use ${symbols.join(", ")}` : "it takes a number without a unit";
}

function ambiguity(text: string): ParsedQuantity | null {
  const match = AMBIGUOUS_COMMA.exec(text);
  if (!match) return null;
  const [decimal, thousand] = [".", ""].map((mark) => text.replace(match[0], match[1] + mark + match[2]));
  return {
    ok: false,
    message: `“${text}” may be ${match[1]}.${match[2]} or ${match[1]}${match[2]}: which is meant?`,
    choices: [decimal, thousand],
  };
}

function toSi(value: number, unit: Unit): ParsedQuantity {
  return { ok: true, value: value * unit.factor + (unit.offset ?? 0) };
}

/**
 * Reads what was typed into a field.
 * @param typed the text
 * @param bareUnit symbol of the unit that the field shows, which a number without a unit is taken in
 * @returns the value in SI, or one sentence that says what is wrong and what to do
 */
export function parseQuantity(
  typed: string,
  dimension: Dimension,
  system: UnitSystem,
  bareUnit?: string,
): ParsedQuantity {
  const text = typed.replace(/[\u00a0\u202f]/g, " ").trim();
  if (text === "") return { ok: false, message: "Nothing is entered here: type a number." };
  if (text.length > LONGEST_TEXT)
    return { ok: false, message: "This is too long for a number: type a shorter one." };
  const special = specialReading(text, dimension);
  if (special !== null) return { ok: true, value: special };
  const question = ambiguity(text);
  if (question) return question;
  const reading = readArithmetic(text.replace(PREFIX_AS_POINT, "$1.$3$2$4"));
  if (!reading.ok)
    return {
      ok: false,
      message: `“${text}” cannot be read, because ${reading.message}: type a number such as 12.5.`,
    };
  if (reading.rest === "") {
    const shown =
      bareUnit === undefined ? undefined : unitsOf(dimension).find((unit) => unit.symbol === bareUnit);
    return toSi(reading.value, shown ?? preferredUnit(dimension, system));
  }
  const unit = findUnit(reading.rest, dimension);
  if (!unit)
    return { ok: false, message: `“${reading.rest}” is no unit of this field: ${unitList(dimension)}.` };
  return toSi(reading.value, unit);
}
