/** Stages of the electric field and the secondary's modes. */

import type { SolvedModes } from "../../calc/circuit/secondaryCircuit";
import { type CoilConductors, coilConductors, type SecondaryShape } from "../../calc/coil/conductors";
import { type Crossing, crossings } from "../../calc/coil/crossings";
import { type ElectricField, solveElectricField } from "../../calc/coil/electricField";
import { coilMesh } from "../../calc/coil/mesh";
import { isSolvableShape, primaryShape } from "../../calc/coil/primaryGeometry";
import { type SecondaryMode, secondaryModes } from "../../calc/coil/secondaryModes";
import {
  roundWireWinding,
  SECTIONS,
  type SectionInductance,
  sectionInductance,
  sectionInductanceAt,
  turnsFit,
} from "../../calc/coil/sectionInductance";
import type { Secondary } from "../../calc/design-parts";
import { guarded, PRIMARY_SHAPE, SECONDARY_SHAPE } from "../solvable";
import { stage } from "../stage";

function secondaryShape({ formerDiameter, windingLength, baseHeight, wire }: Secondary): SecondaryShape {
  return { formerDiameter, windingLength, baseHeight, wire: { overallDiameter: wire.overallDiameter } };
}

export interface Conductors {
  /** null if the primary's turns cannot be laid out as specified */
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
      primary: { ...primaryShape(design.primary), strikeRail: design.primary.strikeRail },
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

/** Null if the wire is thicker than its pitch, because such turns cannot lie side by side. */
export const windingInductanceStage = guarded(
  SECONDARY_SHAPE,
  null,
  stage(
    (design) => ({
      winding: roundWireWinding(design.secondary),
      floorHeight: design.corrections.floorConducts ? design.secondary.baseHeight : null,
    }),
    ({ winding, floorHeight }): SectionInductance | null =>
      turnsFit(winding) ? sectionInductance(winding, floorHeight ?? undefined) : null,
  ),
);

function modesOf(field: ElectricField, inductance: SectionInductance): SolvedModes {
  const solve = (elastance: ElectricField["bare"]): SecondaryMode[] =>
    secondaryModes(elastance, field.functions, inductance.matrix, SECTIONS);
  const bare = solve(field.bare);
  return {
    inductance,
    bare,
    loaded: field.loaded ? solve(field.loaded.elastance) : bare,
    functions: field.functions,
  };
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
      inductance: SectionInductance | null,
    ): SolvedModes | null => {
      if (!field || !inductance) return null;
      const modes = modesOf(field, inductance);
      if (!wireCurrent) return modes;
      return modesOf(
        field,
        sectionInductanceAt(inductance.winding, secondary, floorHeight, modes.loaded[0].resonance),
      );
    },
  ),
);
