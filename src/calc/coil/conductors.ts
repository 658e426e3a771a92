/**
 * The conductors of a coil as simple shapes in the half plane (radius, height), with the distances
 * between them: what the field solve meshes, the findings judge and the drawing shows.
 */
import type { Room, Secondary, StrikeRail, TopLoadElement } from "../design-parts";
import { heightAtTurn, type PrimaryShape, radiusAtTurn } from "./primaryGeometry";

/** A circular section round the axis, or a circle on it: a toroid, a turn of tube, a rail, a sphere. */
export interface RoundConductor {
  kind: "ring" | "sphere";
  /** dotted path of the part of the design */
  path: string;
  /** m, axis to the section's centre; 0 for a sphere */
  centreRadius: number;
  /** m */
  sectionRadius: number;
  /** m */
  centreHeight: number;
}

/** A cylinder round the axis: the winding, or a wall. */
export interface Cylinder {
  path: string;
  /** m */
  radius: number;
  lowerEnd: number;
  length: number;
}

/** What of a secondary decides where its charge sits. */
export type SecondaryShape = Pick<Secondary, "formerDiameter" | "windingLength" | "baseHeight"> & {
  wire: Pick<Secondary["wire"], "overallDiameter">;
};

export interface CoilConductors {
  winding: Cylinder;
  topLoad: RoundConductor[];
  /** one ring a turn; a begun last one at its middle, thinner */
  primary: RoundConductor[];
  /** start and end of the primary's conductor, half a turn beyond its rings: what must clear other parts */
  primaryEnds: RoundConductor[];
  rail: RoundConductor | null;
  wall: Cylinder | null;
  /** m, a conducting ceiling; null if there is none */
  ceilingHeight: number | null;
}

/** The winding as a sheet at the wires' centres. */
export function windingSheet(secondary: SecondaryShape): Cylinder {
  return {
    path: "secondary.windingLength",
    radius: 0.5 * (secondary.formerDiameter + secondary.wire.overallDiameter),
    lowerEnd: secondary.baseHeight,
    length: secondary.windingLength,
  };
}

function topLoadConductor(element: TopLoadElement, index: number): RoundConductor {
  const path = `topLoad.elements.${index}`;
  if (element.shape === "sphere") {
    return {
      kind: "sphere",
      path,
      centreRadius: 0,
      sectionRadius: 0.5 * element.diameter,
      centreHeight: element.centreHeight,
    };
  }
  return {
    kind: "ring",
    path,
    centreRadius: 0.5 * (element.outerDiameter - element.tubeDiameter),
    sectionRadius: 0.5 * element.tubeDiameter,
    centreHeight: element.centreHeight,
  };
}

interface PrimaryTurn {
  /** turns from the start to the turn's middle */
  middle: number;
  /** how much of a turn it is, 1 but for a begun last one */
  part: number;
}

function primaryTurns(turns: number): PrimaryTurn[] {
  const whole = Math.floor(turns + 1e-9);
  const middles = Array.from({ length: whole }, (_, index) => ({ middle: index + 0.5, part: 1 }));
  const rest = turns - whole;
  return rest > 1e-9 ? [...middles, { middle: whole + 0.5 * rest, part: rest }] : middles;
}

/**
 * A turn as a ring. A partial one is closer than a pitch to its neighbour; its section shrinks with
 * its share of a turn, so that it never touches where the spiral does not and grows continuously.
 */
function primaryRing(primary: PrimaryShape, { middle, part }: PrimaryTurn): RoundConductor {
  return {
    kind: "ring",
    path: "primary",
    centreRadius: radiusAtTurn(primary, middle),
    sectionRadius: 0.5 * primary.tubeDiameter * part,
    centreHeight: heightAtTurn(primary, middle),
  };
}

function railRing(rail: StrikeRail): RoundConductor {
  return {
    kind: "ring",
    path: "primary.strikeRail",
    centreRadius: rail.radius,
    sectionRadius: 0.5 * rail.tubeDiameter,
    centreHeight: rail.height,
  };
}

/** Height of a conducting wall without a conducting ceiling, in heights of the coil. */
const WALL_HEIGHTS = 3;
/** Part of its radius or height that a wall stands above the ground plane, so that it does not touch its image. */
const WALL_GAP = 0.01;

/** The part of the room that is in the field. */
type Surroundings = Pick<Room, "ceilingHeight" | "wallDistance" | "ceilingConducts" | "wallConducts">;

function wallCylinder(room: Surroundings, coilHeight: number): Cylinder | null {
  if (!room.wallConducts || room.wallDistance === null) return null;
  const upperEnd = room.ceilingHeight ?? WALL_HEIGHTS * coilHeight;
  const lowerEnd = WALL_GAP * Math.min(room.wallDistance, upperEnd);
  return { path: "room.wallDistance", radius: room.wallDistance, lowerEnd, length: upperEnd - 2 * lowerEnd };
}

/** All conductors of a coil in its room. */
export function coilConductors(
  secondary: SecondaryShape,
  elements: readonly TopLoadElement[],
  primary: PrimaryShape & { strikeRail: StrikeRail | null },
  room: Surroundings,
): CoilConductors {
  const winding = windingSheet(secondary);
  const topLoad = elements.map(topLoadConductor);
  const top = Math.max(
    winding.lowerEnd + winding.length,
    ...topLoad.map((each) => each.centreHeight + each.sectionRadius),
  );
  return {
    winding,
    topLoad,
    primary: primaryTurns(primary.turns).map((turn) => primaryRing(primary, turn)),
    primaryEnds: [0, primary.turns].map((middle) => primaryRing(primary, { middle, part: 1 })),
    rail: primary.strikeRail ? railRing(primary.strikeRail) : null,
    wall: wallCylinder(room, top),
    ceilingHeight: room.ceilingConducts ? room.ceilingHeight : null,
  };
}

/** Clear distance of two round conductors, m; negative where they cross. */
export function roundGap(a: RoundConductor, b: RoundConductor): number {
  const centres = Math.hypot(a.centreRadius - b.centreRadius, a.centreHeight - b.centreHeight);
  return centres - a.sectionRadius - b.sectionRadius;
}

/** Clear distance of a round conductor from a cylinder, m; negative where they cross. */
export function cylinderGap(round: RoundConductor, cylinder: Cylinder): number {
  const nearest = Math.min(
    Math.max(round.centreHeight, cylinder.lowerEnd),
    cylinder.lowerEnd + cylinder.length,
  );
  return Math.hypot(round.centreRadius - cylinder.radius, round.centreHeight - nearest) - round.sectionRadius;
}
