/** Stages of the electric field and the secondary's modes. */

import { resistivity, skinDepth } from "../../calc/coil/conductor";
import { type CoilConductors, coilConductors, type SecondaryShape } from "../../calc/coil/conductors";
import { type Crossing, crossings } from "../../calc/coil/crossings";
import { type ElectricField, solveElectricField } from "../../calc/coil/electricField";
import { coilMesh } from "../../calc/coil/mesh";
import { isSolvableShape, type PrimaryShape } from "../../calc/coil/primaryGeometry";
import { type SecondaryMode, secondaryModes } from "../../calc/coil/secondaryModes";
import { roundWireSkinEffect } from "../../calc/coil/skinEffect";
import { wireDiamagnetism } from "../../calc/coil/wireDiamagnetism";
import type { DesignParts, Secondary } from "../../calc/design-parts";
import { UNIFORM_CURRENT } from "../../calc/field/loops";
import { type RoundWireWinding, sectionInductanceMatrix } from "../../calc/field/windingInductance";
import { guarded, PRIMARY_SHAPE, SECONDARY_SHAPE } from "../solvable";
import { stage } from "../stage";

/** Equal sections of the secondary in which current and mutual inductance are told apart. */
export const SECTIONS = 100;

function secondaryShape({ formerDiameter, windingLength, baseHeight, wire }: Secondary): SecondaryShape {
  return { formerDiameter, windingLength, baseHeight, wire: { overallDiameter: wire.overallDiameter } };
}

/** Everything of a primary but its tap, its wall and its leads: where its copper lies. */
export function primaryShape({ primary }: DesignParts): PrimaryShape {
  const { innerRadius, turns, pitch, inclinationDegrees, tubeDiameter, baseHeight } = primary;
  return { innerRadius, turns, pitch, inclinationDegrees, tubeDiameter, baseHeight };
}

/** The secondary as round turns. */
export function roundWireWinding({ secondary }: DesignParts): RoundWireWinding {
  return {
    turns: secondary.turns,
    pitch: secondary.windingLength / secondary.turns,
    radius: 0.5 * (secondary.formerDiameter + secondary.wire.overallDiameter),
    conductorRadius: 0.5 * secondary.wire.conductorDiameter,
  };
}

export interface Conductors {
  /** null where the primary's turns cannot be laid as they are asked for */
  coil: CoilConductors | null;
  crossings: Crossing[];
}

export const conductorsStage = guarded(
  [...SECONDARY_SHAPE, ...PRIMARY_SHAPE, "primary.strikeRail", "topLoad.elements", "room"],
  { coil: null, crossings: [] },
  stage(
    (design) => ({
      secondary: secondaryShape(design.secondary),
      elements: design.topLoad.elements,
      primary: { ...primaryShape(design), strikeRail: design.primary.strikeRail },
      room: design.room,
    }),
    ({ secondary, elements, primary, room }): Conductors => {
      if (!isSolvableShape(primary)) return { coil: null, crossings: [] };
      const coil = coilConductors(secondary, elements, primary, room);
      return { coil, crossings: crossings(coil) };
    },
  ),
);

export const electricFieldStage = stage(
  () => null,
  (_, { coil, crossings: found }: Conductors): ElectricField | null =>
    !coil || found.length > 0
      ? null
      : solveElectricField(coilMesh(coil), { ceilingHeight: coil.ceilingHeight }),
);

export interface WindingInductance {
  winding: RoundWireWinding;
  /** H, SECTIONS² values */
  matrix: Float64Array;
}

export function windingInductanceOf(
  winding: RoundWireWinding,
  heightAboveConductingFloor: number | undefined,
  distribution = UNIFORM_CURRENT,
): WindingInductance {
  const options = { currentDistribution: distribution, heightAboveConductingFloor };
  return { winding, matrix: sectionInductanceMatrix(winding, SECTIONS, options) };
}

/** The winding as eddy currents in its wire leave it: less internal inductance, and flux pushed out. */
export function atFrequency(
  winding: RoundWireWinding,
  { wire, windingTemperature }: Secondary,
  floorHeight: number | undefined,
  frequency: number,
): WindingInductance {
  const depth = skinDepth(resistivity(wire.material, windingTemperature), frequency);
  const { internalInductanceRatio } = roundWireSkinEffect((2 * winding.conductorRadius) / depth);
  const moved = windingInductanceOf(winding, floorHeight, UNIFORM_CURRENT * internalInductanceRatio);
  const kept = 1 - wireDiamagnetism(winding, depth);
  return { winding, matrix: moved.matrix.map((value) => value * kept) };
}

/** Null where the wire is thicker than its pitch: such turns cannot lie side by side. */
export const windingInductanceStage = guarded(
  SECONDARY_SHAPE,
  null,
  stage(
    (design) => ({
      winding: roundWireWinding(design),
      floorHeight: design.corrections.floorConducts ? design.secondary.baseHeight : null,
    }),
    ({ winding, floorHeight }): WindingInductance | null =>
      2 * winding.conductorRadius < winding.pitch
        ? windingInductanceOf(winding, floorHeight ?? undefined)
        : null,
  ),
);

export interface Modes {
  /** the winding as it is at the fundamental, corrections included */
  inductance: WindingInductance;
  /** with top load; the bare ones where there is none */
  loaded: SecondaryMode[];
  bare: SecondaryMode[];
}

function modesOf(field: ElectricField, inductance: WindingInductance): Modes {
  const solve = (elastance: ElectricField["bare"]): SecondaryMode[] =>
    secondaryModes(elastance, field.functions, inductance.matrix, SECTIONS);
  const bare = solve(field.bare);
  return { inductance, bare, loaded: field.loaded ? solve(field.loaded.elastance) : bare };
}

export const modesStage = guarded(
  ["secondary.windingTemperature"],
  null,
  stage(
    (design) => ({
      secondary: design.secondary,
      wireCurrent: design.corrections.wireCurrent,
      floorHeight: design.corrections.floorConducts ? design.secondary.baseHeight : undefined,
    }),
    (
      { secondary, wireCurrent, floorHeight },
      field: ElectricField | null,
      inductance: WindingInductance | null,
    ): Modes | null => {
      if (!field || !inductance) return null;
      const modes = modesOf(field, inductance);
      if (!wireCurrent) return modes;
      return modesOf(
        field,
        atFrequency(inductance.winding, secondary, floorHeight, modes.loaded[0].resonance),
      );
    },
  ),
);
