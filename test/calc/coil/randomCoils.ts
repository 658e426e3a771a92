/** Valid coils drawn from a seed, the kinds that people build. */
import type { Design } from "../../../src/design/design";
import { pierHallLeft } from "../../../src/design/examples";

/** Numbers between 0 and 1, the same at every run (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** One coil, whose conductors may cross. */
export function randomCoil(random: () => number): Design {
  const between = (from: number, to: number): number => from + (to - from) * random();
  const formerDiameter = between(0.06, 0.32);
  const windingLength = formerDiameter * between(2.5, 5.5);
  const turns = Math.round(between(700, 1800));
  const overallDiameter = (windingLength / turns) * between(0.95, 0.995);
  const baseHeight = between(0.05, 0.4);
  const outerDiameter = formerDiameter * between(2.2, 4.5);
  const tubeDiameter = outerDiameter * between(0.15, 0.3);
  const tube = between(0.006, 0.012);
  const inclinationDegrees = [0, 0, 15, 30, 90][Math.floor(random() * 5)];
  const second = random() < 0.3;
  const centreHeight = baseHeight + windingLength + tubeDiameter * between(0.55, 1.2);
  return {
    ...pierHallLeft,
    secondary: {
      ...pierHallLeft.secondary,
      formerDiameter,
      windingLength,
      turns,
      wire: { material: "copper", conductorDiameter: overallDiameter * between(0.86, 0.93), overallDiameter },
      baseHeight,
    },
    topLoad: {
      ...pierHallLeft.topLoad,
      elements: [
        { shape: "toroid", outerDiameter, tubeDiameter, centreHeight },
        ...(second
          ? [
              {
                shape: "sphere" as const,
                diameter: tubeDiameter * 1.5,
                centreHeight: centreHeight + tubeDiameter * between(1.4, 1.8),
              },
            ]
          : []),
      ],
    },
    primary: {
      ...pierHallLeft.primary,
      innerRadius: formerDiameter / 2 + between(0.02, 0.06) + tube,
      turns: between(5, 11),
      tap: 4,
      pitch: tube * between(1.25, 2),
      inclinationDegrees,
      tubeDiameter: tube,
      baseHeight: baseHeight + between(-0.02, 0.02),
      strikeRail: null,
    },
  };
}

/** A number of coils whose conductors do not cross; the caller says which are fit. */
export function randomCoils(count: number, suits: (design: Design) => boolean, seed = 11): Design[] {
  const random = seeded(seed);
  const coils: Design[] = [];
  while (coils.length < count) {
    const coil = randomCoil(random);
    if (suits(coil)) coils.push(coil);
  }
  return coils;
}
