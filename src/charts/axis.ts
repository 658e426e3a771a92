/** Axes of the charts: rounded domains and their ticks. */

export interface Domain {
  from: number;
  to: number;
}

/** The domain of an axis whose ends are not finite. */
const FALLBACK: Domain = { from: 0, to: 1 };
/** Fraction of the larger end: in a narrower domain, round numbers coincide. */
const NARROWEST = 1e-9;
const LARGEST = 1e300;

/** Whether ticks between two ends can differ. */
function isDrawable({ from, to }: Domain): boolean {
  const size = Math.max(Math.abs(from), Math.abs(to));
  return to - from > NARROWEST * size && size > 1 / LARGEST && size < LARGEST;
}

/** The smallest of 1, 2 or 5 times a power of ten that is at least the size. */
export function roundStep(size: number): number {
  const power = 10 ** Math.floor(Math.log10(size));
  const step = [1, 2, 5, 10].find((factor) => factor * power >= size * (1 - 1e-9)) ?? 10;
  return step * power;
}

/** Ticks at round numbers within a domain, about `count` of them. */
export function linearTicks(domain: Domain, count: number): number[] {
  const { from, to } = domain;
  if (!isDrawable(domain)) return [Number.isFinite(from) ? from : 0];
  const step = roundStep((to - from) / count);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}

/** A domain widened to round numbers. */
export function roundedDomain({ from, to }: Domain, count: number): Domain {
  if (!(Math.max(Math.abs(from), Math.abs(to)) < LARGEST)) return FALLBACK;
  if (!isDrawable({ from, to }))
    return { from: from - Math.abs(from || 1) * 0.1, to: to + Math.abs(to || 1) * 0.1 };
  const step = roundStep((to - from) / count);
  return { from: Math.floor(from / step + 1e-9) * step, to: Math.ceil(to / step - 1e-9) * step };
}

/** A domain narrowed to round numbers, which does not move when its ends drift a little. */
export function innerDomain({ from, to }: Domain, count: number): Domain {
  if (!isDrawable({ from, to })) return roundedDomain({ from, to }, count);
  const step = roundStep((to - from) / count);
  return { from: Math.ceil(from / step - 1e-9) * step, to: Math.floor(to / step + 1e-9) * step };
}

const MOST_POWERS = 12;

/** Powers of ten, with 2 and 5 between them if they are few. */
export function logTicks({ from, to }: Domain): number[] {
  const decades = Math.log10(to / from);
  if (!Number.isFinite(decades)) return [];
  const factors = decades > 3 ? [1] : [1, 2, 5];
  const ticks: number[] = [];
  const stride = Math.max(1, Math.ceil(decades / MOST_POWERS));
  for (let power = Math.floor(Math.log10(from)); power <= Math.ceil(Math.log10(to)); power += stride) {
    for (const factor of factors) {
      const tick = Number((factor * 10 ** power).toPrecision(3));
      if (tick >= from * (1 - 1e-9) && tick <= to * (1 + 1e-9)) ticks.push(tick);
    }
  }
  return ticks;
}

/** Fraction of the largest value: a log axis starts no lower. */
const DEEPEST = 1e-15;

/** Domain of positive values for a log axis, widened to 1, 2 or 5; zeros and non-finite values are ignored. */
export function logDomain(values: readonly number[]): Domain {
  const positive = values.filter((value) => value > 1 / LARGEST && value < LARGEST);
  if (positive.length === 0) return { from: 1, to: 10 };
  const most = positive.reduce((high, value) => Math.max(high, value), 0);
  const least = positive.reduce((low, value) => Math.min(low, Math.max(value, DEEPEST * most)), most);
  const below = roundStep(least) > least * (1 + 1e-9) ? roundStep(least) / 10 : roundStep(least);
  const down = [5, 2, 1]
    .map((factor) => factor * 10 ** Math.floor(Math.log10(least)))
    .find((edge) => edge <= least);
  return { from: down ?? below, to: Math.max(roundStep(most), 2 * (down ?? below)) };
}
