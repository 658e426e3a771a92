/** The placing of two coils: their least spacing, and the gap between their top loads. */
import type { ChargeRing } from "./chargeRings";
import type { RoundConductor } from "./conductors";

/** m, from the axis to the farthest conductor of a coil. */
function reach(rings: readonly ChargeRing[]): number {
  return rings.reduce((most, { radius }) => Math.max(most, radius), 0);
}

/** m from axis to axis, at which the farthest conductors of two coils meet. */
export function leastSpacing(first: readonly ChargeRing[], second: readonly ChargeRing[]): number {
  return reach(first) + reach(second);
}

/** m between the nearest points of two top loads, element by element; infinite without one. */
export function topLoadGap(
  first: readonly RoundConductor[],
  second: readonly RoundConductor[],
  spacing: number,
): number {
  const gaps = first.flatMap((a) =>
    second.map((b) => {
      const across = spacing - a.centreRadius - b.centreRadius;
      return Math.hypot(across, a.centreHeight - b.centreHeight) - a.sectionRadius - b.sectionRadius;
    }),
  );
  return Math.min(...gaps);
}

export interface BetweenTops {
  /** V between two top loads */
  voltageBetween: number;
  /** V/m, that voltage over their gap */
  meanField: number;
}

/**
 * Between two top loads at their largest voltages.
 * @param sense 1 in phase, −1 opposed
 * @param gap m
 */
export function betweenTops(first: number, second: number, sense: 1 | -1, gap: number): BetweenTops {
  const voltageBetween = Math.abs(first - sense * second);
  return { voltageBetween, meanField: voltageBetween / gap };
}
