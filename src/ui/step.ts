/**
 * The step of an arrow key: 1, 2 or 5 times a power of ten, about a hundredth of the number shown.
 * @param shown the number as it stands in the field, in the field's own unit
 * @param whole whether only whole numbers have a meaning
 */
export function arrowStep(shown: number, whole: boolean): number {
  const aim = Math.abs(shown) / 100;
  const step = aim > 0 ? roundTo125(aim) : 0.1;
  return whole ? Math.max(1, Math.round(step)) : step;
}

function roundTo125(aim: number): number {
  const power = 10 ** Math.floor(Math.log10(aim));
  const mantissa = aim / power;
  if (mantissa < 1.5) return power;
  if (mantissa < 3.5) return 2 * power;
  return mantissa < 7.5 ? 5 * power : 10 * power;
}

/** The number moved by a step, without the dust of binary fractions, as text that the parser reads. */
export function stepped(shown: number, step: number): string {
  return String(Number((shown + step).toPrecision(12)));
}
