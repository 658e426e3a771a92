/** A coil solved from end to end, as the evaluation does it, with a factor on every number of nodes. */

import fc from "fast-check";
import { criticalField } from "../../../src/calc/coil/breakout";
import {
  type CoilConductors,
  coilConductors,
  cylinderGap,
  type SecondaryShape,
} from "../../../src/calc/coil/conductors";
import { crossings } from "../../../src/calc/coil/crossings";
import { solveElectricField } from "../../../src/calc/coil/electricField";
import { coilMesh } from "../../../src/calc/coil/mesh";
import type { PrimaryShape } from "../../../src/calc/coil/primaryGeometry";
import { secondaryModes } from "../../../src/calc/coil/secondaryModes";
import { topLoadFields } from "../../../src/calc/coil/topLoadField";
import type { Room, StrikeRail, TopLoadElement } from "../../../src/calc/design-parts";
import { sectionInductanceMatrix } from "../../../src/calc/field/windingInductance";
import { pierHallLeft } from "../../../src/design/examples";
import { defaultValue } from "../../../src/fields/defaults";
import { roomFields } from "../../../src/fields/surroundingsFields";

export interface CoilParts {
  secondary: SecondaryShape & { turns: number };
  elements: TopLoadElement[];
  primary: PrimaryShape & { strikeRail: StrikeRail | null };
  room: Room;
}

const AIR = { temperature: 293.15, pressure: 101325 };
const SECTIONS = 100;

export const OPEN_ROOM: Room = {
  ...defaultValue(roomFields),
  ceilingHeight: null,
  wallDistance: null,
  audienceDistance: null,
};

export function partsOf({ secondary, topLoad, primary, room }: typeof pierHallLeft): CoilParts {
  return { secondary, elements: topLoad.elements, primary, room };
}

export const EXAMPLE: CoilParts = partsOf(pierHallLeft);

export function conductorsOf({ secondary, elements, primary, room }: CoilParts): CoilConductors {
  return coilConductors(secondary, elements, primary, room);
}

export function sectionInductance({ secondary }: CoilParts, sections: number): Float64Array {
  const pitch = secondary.windingLength / secondary.turns;
  return sectionInductanceMatrix(
    {
      turns: secondary.turns,
      pitch,
      radius: 0.5 * (secondary.formerDiameter + secondary.wire.overallDiameter),
      conductorRadius: 0.4 * pitch,
    },
    sections,
  );
}

/** Doubling every discretisation is `refinement` 2: nodes, charge functions, sections and ceiling images. */
export function solveCoil(parts: CoilParts, refinement = 1) {
  const coil = conductorsOf(parts);
  const mirrors = { ceilingHeight: coil.ceilingHeight, ceilingImages: 3 * refinement };
  const field = solveElectricField(coilMesh(coil, refinement), mirrors);
  if (!field) throw new Error("the elimination failed");
  const sections = SECTIONS * refinement;
  const inductance = sectionInductance(parts, sections);
  const solve = (elastance: typeof field.bare) =>
    secondaryModes(elastance, field.functions, inductance, sections);
  const bare = solve(field.bare);
  const modes = field.loaded ? solve(field.loaded.elastance) : bare;
  const fields = topLoadFields(field, modes[0]);
  const breakoutVoltage = Math.min(
    ...fields.map((each, index) => criticalField(parts.elements[index], AIR, 1) / each.largest),
  );
  return { coil, field, inductance, modes, bare, fields, breakoutVoltage };
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A number for each choice that makes a coil of a usual kind, small to large. */
const choices = fc.record({
  diameter: between(0.06, 0.35),
  slenderness: between(1.5, 6),
  turns: fc.integer({ min: 300, max: 2000 }),
  base: between(0.05, 0.3),
  outer: between(2, 4.5),
  tube: between(0.15, 0.4),
  clearance: between(0.15, 1),
  second: fc.constantFrom("none", "toroid", "sphere"),
  primaryTurns: between(2, 14),
  inclination: fc.constantFrom(0, 20, 45, 90),
  spacing: between(1.05, 2.5),
  gap: between(0.012, 0.06),
  rail: fc.boolean(),
  ceiling: fc.boolean(),
  wall: fc.boolean(),
});

type Choices = typeof choices extends fc.Arbitrary<infer Value> ? Value : never;

function topLoadOf({ diameter, outer, tube, clearance, second }: Choices, top: number): TopLoadElement[] {
  const outerDiameter = outer * diameter;
  const tubeDiameter = tube * outerDiameter;
  const centreHeight = top + (clearance + 0.5) * tubeDiameter;
  const first: TopLoadElement = { shape: "toroid", outerDiameter, tubeDiameter, centreHeight };
  if (second === "none") return [first];
  if (second === "toroid") return [first, { ...first, centreHeight: centreHeight + 1.02 * tubeDiameter }];
  const radius = 0.4 * outerDiameter;
  return [
    first,
    { shape: "sphere", diameter: 2 * radius, centreHeight: centreHeight + tubeDiameter + radius },
  ];
}

function coilOf(choice: Choices): CoilParts {
  const { diameter, slenderness, turns, base, primaryTurns, inclination, spacing, gap } = choice;
  const windingLength = slenderness * diameter;
  const top = base + windingLength;
  const elements = topLoadOf(choice, top);
  const tubeDiameter = 0.008;
  const innerRadius = 0.5 * diameter + tubeDiameter + gap;
  const primary = {
    innerRadius,
    turns: primaryTurns,
    pitch: spacing * tubeDiameter,
    inclinationDegrees: inclination,
    tubeDiameter,
    baseHeight: base,
    strikeRail: choice.rail ? { radius: innerRadius + 0.35, tubeDiameter, height: base + 0.05 } : null,
  };
  const room = {
    ...OPEN_ROOM,
    ceilingHeight: 2 * top,
    wallDistance: innerRadius + 3 * diameter + 0.4,
    ceilingConducts: choice.ceiling,
    wallConducts: choice.wall,
  };
  const secondary = {
    formerDiameter: diameter,
    windingLength,
    turns,
    baseHeight: base,
    wire: { overallDiameter: 3e-4 },
  };
  return { secondary, elements, primary, room };
}

function isValid(parts: CoilParts): boolean {
  const coil = conductorsOf(parts);
  const clear = [...coil.primary, ...coil.topLoad].every((round) => cylinderGap(round, coil.winding) > 0.008);
  return clear && crossings(coil).length === 0;
}

/** Valid coils of all kinds: flat to helical primaries, one or two elements, with and without rail and room. */
export const randomCoils: fc.Arbitrary<CoilParts> = choices.map(coilOf).filter(isValid);
