/**
 * The step of an arrow key: 1, 2 or 5 times a power of ten, about a hundredth of the number shown.
 * @param shown the number as the field shows it, in the field's own unit
 * @param whole whether only whole numbers are valid
 */
export function arrowStep(shown: number, whole: boolean): number {
  const target = Math.abs(shown) / 100;
  const step = target > 0 ? roundTo125(target) : 0.1;
  return whole ? Math.max(1, Math.round(step)) : step;
}

function roundTo125(target: number): number {
  const power = 10 ** Math.floor(Math.log10(target));
  const mantissa = target / power;
  if (mantissa < 1.5) return power;
  if (mantissa < 3.5) return 2 * power;
  return mantissa < 7.5 ? 5 * power : 10 * power;
}

/** The number after a step, without binary rounding residue, as text for the parser. */
export function stepped(shown: number, step: number): string {
  return String(Number((shown + step).toPrecision(12)));
}
