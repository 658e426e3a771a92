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

function withoutTrailingZeros(number: string): string {
  return number.includes(".") ? number.replace(/\.?0+$/, "") : number;
}

function inUnit(value: number, unit: Unit): number {
  return (value - (unit.offset ?? 0)) / unit.factor;
}

function numberText(value: number, dimension: Dimension, digits: number): string {
  const exact = digits > 6 || dimension === "count";
  const text = exact
    ? withoutTrailingZeros(significant(value, Math.max(digits, 6)))
    : significant(value, digits);
  return exact ? text : text.replace("-", MINUS);
}

/**
 * A value for reading.
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
  const unit = shownUnit(value, dimension, system);
  const number = numberText(inUnit(value, unit), dimension, digits);
  const gap = unit.symbol === "" || unit.symbol === "°" ? "" : NARROW_NO_BREAK_SPACE;
  return { number, unit: unit.symbol, text: `${number}${gap}${unit.symbol}` };
}
