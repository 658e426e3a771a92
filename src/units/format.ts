import type { Dimension } from "./dimension";
import { shownUnit, type Unit } from "./quantities";
import type { UnitSystem } from "./unitSystem";

export interface FormattedQuantity {
  number: string;
  unit: string;
  /** number, thin space and unit */
  text: string;
}

const NARROW_NO_BREAK_SPACE = "\u202f";
const MINUS = "\u2212";
const DASH = "–";

/** Significant digits without an exponent; whole numbers keep all their digits. */
function significant(value: number, digits: number): string {
  if (value === 0) return "0";
  const magnitude = Math.floor(Math.log10(Math.abs(value)));
  const decimals = Math.max(0, Math.min(18, digits - 1 - magnitude));
  const rounded = value.toFixed(decimals);
  // rounding up to the next decade would show a digit too many
  const grown = Math.floor(Math.log10(Math.abs(Number(rounded)))) > magnitude && decimals > 0;
  return grown ? value.toFixed(decimals - 1) : rounded;
}

const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/** `3.000e-8` in print form: 3.000 × 10⁻⁸ */
function printedExponent(number: string): string {
  const [mantissa, exponent] = number.split("e");
  const raised = exponent
    .replace("+", "")
    .replace("-", "⁻")
    .replace(/\d/g, (digit) => SUPERSCRIPTS[Number(digit)]);
  return `${mantissa}${NARROW_NO_BREAK_SPACE}×${NARROW_NO_BREAK_SPACE}10${raised}`;
}

/** Beyond these powers of ten a row of zeros is hard to read, and small values lose digits. */
function needsExponent(value: number): boolean {
  return value !== 0 && (Math.abs(value) < 1e-6 || Math.abs(value) >= 1e15);
}

function withoutTrailingZeros(number: string): string {
  return number.includes(".") ? number.replace(/\.?0+$/, "") : number;
}

function inUnit(value: number, unit: Unit): number {
  return (value - (unit.offset ?? 0)) / unit.factor;
}

/** Digits of a value that is finite in SI and overflows in its unit, as 1e300 F does in nF. */
const OVERFLOW_DIGITS = 7;

/** The text of such a value: mantissa and exponent are scaled separately. */
function overflowText(value: number, unit: Unit, digits: number): string {
  const [mantissa, exponent] = value.toExponential().split("e").map(Number);
  const power = Math.round(Math.log10(unit.factor));
  const shown = mantissa / (unit.factor / 10 ** power);
  if (digits > 6) return `${Number(shown.toPrecision(OVERFLOW_DIGITS))}e+${exponent - power}`;
  return printedExponent(`${shown.toFixed(digits - 1)}e${exponent - power}`).replace("-", MINUS);
}

function numberText(value: number, dimension: Dimension, digits: number): string {
  const exact = digits > 6 || dimension === "count";
  if (exact) {
    const most = Math.max(digits, 6);
    return needsExponent(value)
      ? String(Number(value.toPrecision(most)))
      : withoutTrailingZeros(significant(value, most));
  }
  const text = needsExponent(value)
    ? printedExponent(value.toExponential(digits - 1))
    : significant(value, digits);
  return text.replace("-", MINUS);
}

/**
 * A value for display.
 * @param value SI; null, NaN and infinities become a dash
 * @param digits significant digits; above 6 for editing: no trailing zeros, a plain minus sign
 */
export function formatQuantity(
  value: number | null | undefined,
  dimension: Dimension,
  system: UnitSystem,
  digits = 4,
): FormattedQuantity {
  if (value === null || value === undefined || !Number.isFinite(value))
    return { number: DASH, unit: "", text: DASH };
  return formatIn(shownUnit(value, dimension, system), value, dimension, digits);
}

/** A finite value for display in a given unit; digits as above. */
export function formatIn(unit: Unit, value: number, dimension: Dimension, digits = 4): FormattedQuantity {
  const scaled = inUnit(value, unit);
  const number = Number.isFinite(scaled)
    ? numberText(scaled, dimension, digits)
    : overflowText(value, unit, digits);
  const gap = unit.symbol === "" || unit.symbol === "°" ? "" : NARROW_NO_BREAK_SPACE;
  return { number, unit: unit.symbol, text: `${number}${gap}${unit.symbol}` };
}
