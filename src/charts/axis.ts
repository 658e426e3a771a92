/** Axes of the charts: domains rounded to what a reader expects, and the ticks on them. */

export interface Domain {
  from: number;
  to: number;
}

/** 1, 2 or 5 times a power of ten, at least a size. */
export function roundStep(size: number): number {
  const power = 10 ** Math.floor(Math.log10(size));
  const step = [1, 2, 5, 10].find((factor) => factor * power >= size * (1 - 1e-9)) ?? 10;
  return step * power;
}

/** Ticks at round numbers within a domain, about as many as asked for. */
export function linearTicks({ from, to }: Domain, count: number): number[] {
  if (!(to > from)) return [from];
  const step = roundStep((to - from) / count);
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}

/** A domain widened to round numbers. */
export function roundedDomain({ from, to }: Domain, count: number): Domain {
  if (!(to > from)) return { from: from - Math.abs(from || 1) * 0.1, to: to + Math.abs(to || 1) * 0.1 };
  const step = roundStep((to - from) / count);
  return { from: Math.floor(from / step + 1e-9) * step, to: Math.ceil(to / step - 1e-9) * step };
}

/** A domain narrowed to round numbers: it stands still while its ends drift a little. */
export function innerDomain({ from, to }: Domain, count: number): Domain {
  const step = roundStep((to - from) / count);
  return { from: Math.ceil(from / step - 1e-9) * step, to: Math.floor(to / step + 1e-9) * step };
}

/** Powers of ten, and 2 and 5 between them where they are few. */
export function logTicks({ from, to }: Domain): number[] {
  const decades = Math.log10(to / from);
  const factors = decades > 3 ? [1] : [1, 2, 5];
  const ticks: number[] = [];
  for (let power = Math.floor(Math.log10(from)); power <= Math.ceil(Math.log10(to)); power++) {
    for (const factor of factors) {
      const tick = Number((factor * 10 ** power).toPrecision(3));
      if (tick >= from * (1 - 1e-9) && tick <= to * (1 + 1e-9)) ticks.push(tick);
    }
  }
  return ticks;
}

/** Domain of positive values for a log axis, widened to 1, 2 or 5; zeros and what is not finite do not count. */
export function logDomain(values: readonly number[]): Domain {
  const positive = values.filter((value) => value > 0 && Number.isFinite(value));
  if (positive.length === 0) return { from: 1, to: 10 };
  const [least, most] = [Math.min(...positive), Math.max(...positive)];
  const below = roundStep(least) > least * (1 + 1e-9) ? roundStep(least) / 10 : roundStep(least);
  const down = [5, 2, 1]
    .map((factor) => factor * 10 ** Math.floor(Math.log10(least)))
    .find((edge) => edge <= least);
  return { from: down ?? below, to: Math.max(roundStep(most), 2 * (down ?? below)) };
}
