import type { ReferenceRow } from "./referenceRow";

const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const MINUS = "−";
const SPACE = "\u202f";

function power(exponent: number): string {
  const digits = String(Math.abs(exponent)).replace(/\d/g, (digit) => RAISED[Number(digit)]);
  return `10${exponent < 0 ? "⁻" : ""}${digits}`;
}

/** A number with significant digits, with powers of ten in print form: 8.6002 × 10⁻¹². */
export function scientific(value: number, digits: number): string {
  const size = Math.abs(value);
  if (value === 0) return "0";
  if (size >= 1e-3 && size < 10 ** digits) return value.toPrecision(digits).replace("-", MINUS);
  const [mantissa, exponent] = value.toExponential(digits - 1).split("e");
  return `${mantissa.replace("-", MINUS)}${SPACE}×${SPACE}${power(Number(exponent))}`;
}

/** A deviation or tolerance as text: relative ones in per cent, absolute ones in the row's unit. */
export function deviationText(value: number, { absolute, unit }: ReferenceRow): string {
  if (absolute) return unit ? `${scientific(value, 2)}${SPACE}${unit}` : scientific(value, 2);
  return `${scientific(100 * value, 2)}${SPACE}%`;
}

/** The fraction of its tolerance that a row uses, 0 … 1. */
export function shareOfTolerance({ deviation, tolerance }: ReferenceRow): number {
  return Math.abs(deviation) / tolerance;
}
