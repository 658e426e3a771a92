/** The number parser of every field: it reads clear input, asks about ambiguous input, and never guesses. */
import { readArithmetic } from "./arithmetic";
import type { Dimension } from "./dimension";
import { PREFIXES, preferredUnit, QUANTITIES, type Unit } from "./quantities";
import type { UnitSystem } from "./unitSystem";
import { wireGaugeDiameter } from "./wireGauge";

export type ParsedQuantity =
  | { ok: true /** SI */; value: number }
  | {
      ok: false;
      message: string /** readings to choose from, each valid input itself */;
      choices?: string[];
    };

const LONGEST_TEXT = 100;
/** Other spellings of a prefix. */
const PREFIX_SPELLINGS: Record<string, string> = { u: "µ", μ: "µ", K: "k" };

/** `4n7` is 4.7 n: the prefix replaces the decimal point; so does R for ohms. Source: iec60062. */
const PREFIX_AS_POINT = /^(\d+)([pnuµμmkKMG])(\d+)([a-zA-ZΩ]*)$/;
const OHM_AS_POINT = /^(\d+)R(\d*)$/;
/** Unambiguous thousands separators: a second one follows, or the other mark as the decimal point. */
const GROUPED_BY_COMMA = /(?<![\d.,])[1-9]\d{0,2}(?:(?:,\d{3})+(?=\.\d)|(?:,\d{3}){2,}(?![\d,]))/g;
const GROUPED_BY_POINT = /(?<![\d.,])[1-9]\d{0,2}(?:(?:\.\d{3})+(?=,\d)|(?:\.\d{3}){2,}(?![\d.]))/g;
/** Full-width forms, as East Asian keyboards write them; each has an ordinary equivalent. */
const FULL_WIDTH = /[！-～]/g;
const VULGAR_FRACTION = /[¼½¾⅐-⅞]/g;
/** One comma before exactly three digits may be a thousands separator or a decimal comma. */
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

/** A unit in its standard spelling, from the way it is typed without Ω or ² on the keyboard. */
function standardSpelling(text: string): string {
  return text
    .replace(/ohms?$/i, "Ω")
    .replace(/Ω/g, "Ω")
    .replace(/\s*\/\s*/g, "/")
    .replace("^2", "²")
    .trim();
}

/** The unit that follows a number; null if the dimension has none of that name. */
function findUnit(text: string, dimension: Dimension): Unit | null {
  const wanted = standardSpelling(text);
  const exact =
    unitsOf(dimension).find((unit) => named(unit, wanted)) ??
    unitsOf(dimension).find((unit) => named(unit, wanted.toLowerCase()));
  if (exact) return exact;
  const { base, prefixes } = QUANTITIES[dimension];
  if (base === "") return null;
  if (wanted.toLowerCase() === base.toLowerCase()) return { symbol: base, factor: 1 };
  const letter = PREFIX_SPELLINGS[wanted.charAt(0)] ?? wanted.charAt(0);
  const rest = wanted.slice(1);
  const factor = prefixes.includes(letter) && PREFIXES.find(([prefix]) => prefix === letter)?.[1];
  if (!factor || (rest !== "" && rest.toLowerCase() !== base.toLowerCase())) return null;
  return { symbol: letter + base, factor };
}

/** `AWG 28`, `28 AWG`, `AWG 4/0`, `AWG 0000`. */
function gaugeDiameter(text: string): number | null {
  const match = GAUGE.exec(text);
  if (!match) return null;
  const name = match[1] ?? match[2];
  const aught = name.includes("/") ? Number(name[0]) : /^0+$/.test(name) ? name.length : 0;
  return wireGaugeDiameter(aught > 0 ? 1 - aught : Number(name));
}

function feetAndInches(text: string): number | null {
  const match = FEET_AND_INCHES.exec(text);
  return match ? (Number(match[1]) * 12 + Number(match[2].replace(",", "."))) * 0.0254 : null;
}

/** Spellings that exist for one kind of quantity only. */
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

function toSi(number: number, unit: Unit): ParsedQuantity {
  const value = number * unit.factor + (unit.offset ?? 0);
  if (Number.isFinite(value)) return { ok: true, value };
  return { ok: false, message: `${number} ${unit.symbol} is too large for a number: type a smaller one.` };
}

/** The input with one spelling for equivalent characters and without thousands separators. */
function normalizedText(typed: string): string {
  return typed
    .replace(/[\u00a0\u202f]/g, " ")
    .replace(FULL_WIDTH, (sign) => sign.normalize("NFKC"))
    .replace(VULGAR_FRACTION, (sign) => ` ${sign.normalize("NFKC").replace("\u2044", "/")}`)
    .replace(GROUPED_BY_COMMA, (number) => number.replaceAll(",", ""))
    .replace(GROUPED_BY_POINT, (number) => number.replaceAll(".", ""))
    .trim();
}

/** Moves a letter that replaces the decimal point behind the number. */
function withDecimalPoint(text: string, dimension: Dimension): string {
  const ohms = dimension === "resistance" ? text.replace(OHM_AS_POINT, "$1.$2Ω") : text;
  return ohms.replace(PREFIX_AS_POINT, "$1.$3$2$4");
}

function unknownUnit(text: string, rest: string, dimension: Dimension): ParsedQuantity {
  const message = /^[\d.,]/.test(rest)
    ? `“${text}” is not one number: type it as 12.5 or 1 1/2.`
    : `“${rest}” is not a unit of this field: ${unitList(dimension)}.`;
  return { ok: false, message };
}

/**
 * Reads a field's input.
 * @param typed the text
 * @param bareUnit symbol of the unit that the field shows, assumed for a number without a unit
 * @returns the value in SI, or one sentence that says what is wrong and what to do
 */
export function parseQuantity(
  typed: string,
  dimension: Dimension,
  system: UnitSystem,
  bareUnit?: string,
): ParsedQuantity {
  if (typed.length > LONGEST_TEXT)
    return { ok: false, message: "This is too long for a number: type a shorter one." };
  const text = normalizedText(typed);
  if (text === "") return { ok: false, message: "Nothing is entered here: type a number." };
  const special = specialReading(text, dimension);
  if (special !== null) return { ok: true, value: special };
  const question = ambiguity(text);
  if (question) return question;
  const reading = readArithmetic(withDecimalPoint(text, dimension));
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
  return unit ? toSi(reading.value, unit) : unknownUnit(text, reading.rest, dimension);
}
