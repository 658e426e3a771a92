import { type CoilConductors, cylinderGap, type RoundConductor, roundGap } from "./conductors";

/** Two parts of a design that touch or cross. */
export interface Crossing {
  /** dotted path of the part to move */
  path: string;
  /** dotted path of the other part; `ground` for the ground plane, `axis` for a ring that has no hole */
  other: string;
  /** m, zero or below */
  gap: number;
}

function when(gap: number, path: string, other: string): Crossing[] {
  return gap > 0 ? [] : [{ path, other, gap }];
}

function between(some: readonly RoundConductor[], others: readonly RoundConductor[]): Crossing[] {
  return some.flatMap((a) => others.flatMap((b) => when(roundGap(a, b), b.path, a.path)));
}

function pairs(conductors: readonly RoundConductor[]): Crossing[] {
  return conductors.flatMap((a, index) =>
    conductors.slice(index + 1).flatMap((b) => when(roundGap(a, b), b.path, a.path)),
  );
}

/** The first crossing of each pair of parts: eight turns through a former are one fault, not eight. */
function oncePerPair(crossings: readonly Crossing[]): Crossing[] {
  const worst = new Map<string, Crossing>();
  for (const crossing of crossings) {
    const key = `${crossing.path} ${crossing.other}`;
    const known = worst.get(key);
    if (!known || crossing.gap < known.gap) worst.set(key, crossing);
  }
  return [...worst.values()];
}

/** Every pair of conductors that touch or cross; empty if the field can be solved. */
export function crossings(coil: CoilConductors): Crossing[] {
  const rail = coil.rail ? [coil.rail] : [];
  const turns = [...coil.topLoad, ...coil.primary, ...rail];
  const rounds = [...turns, ...coil.primaryEnds];
  const wire = coil.winding;
  const below = wire.lowerEnd > 0 ? [] : when(wire.lowerEnd, "secondary.baseHeight", "ground");
  const throughWinding = rounds.flatMap((round) => when(cylinderGap(round, wire), round.path, "secondary"));
  const throughGround = rounds.flatMap((round) =>
    when(round.centreHeight - round.sectionRadius, round.path, "ground"),
  );
  const withoutHole = rounds
    .filter((round) => round.kind === "ring")
    .flatMap((round) => when(round.centreRadius - round.sectionRadius, round.path, "axis"));
  const { wall, ceilingHeight } = coil;
  const throughWall = wall
    ? [
        ...when(wall.radius - wire.radius, "room.wallDistance", "secondary"),
        ...rounds.flatMap((round) => when(cylinderGap(round, wall), "room.wallDistance", round.path)),
      ]
    : [];
  const windingTop = wire.lowerEnd + wire.length;
  const throughCeiling =
    ceilingHeight === null
      ? []
      : [
          ...when(ceilingHeight - windingTop, "room.ceilingHeight", "secondary"),
          ...rounds.flatMap((round) =>
            when(ceilingHeight - round.centreHeight - round.sectionRadius, "room.ceilingHeight", round.path),
          ),
        ];
  return oncePerPair([
    ...below,
    ...pairs(turns),
    ...between(coil.primaryEnds, [...coil.topLoad, ...rail]),
    ...throughWinding,
    ...throughGround,
    ...withoutHole,
    ...throughWall,
    ...throughCeiling,
  ]);
}
