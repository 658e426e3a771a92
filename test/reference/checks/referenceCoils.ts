/** The coils A and C that several of the reference files share. */
import { type CoilConductors, coilConductors } from "../../../src/calc/coil/conductors";
import electrostatics from "../coil-electrostatics.json";

export type CoilName = "A" | "C";
export const COILS: readonly CoilName[] = ["A", "C"];

const OPEN_AIR = {
  ceilingHeight: null,
  wallDistance: null,
  ceilingConducts: false,
  wallConducts: false,
};

export function inputsOf(name: CoilName) {
  return electrostatics.coils[name].inputs;
}

/** Conductors of a reference coil, with or without its top load and its primary. */
export function referenceCoil(name: CoilName, parts = { topLoad: true, primary: true }): CoilConductors {
  const { secondary, toroid, primary, toroid_centre_height } = inputsOf(name);
  const coil = coilConductors(
    {
      formerDiameter: secondary.former_od,
      windingLength: secondary.length,
      baseHeight: secondary.z0,
      wire: { overallDiameter: secondary.wire_over },
    },
    [
      {
        shape: "toroid",
        outerDiameter: toroid.D,
        tubeDiameter: toroid.d,
        centreHeight: toroid_centre_height,
      },
    ],
    {
      innerRadius: primary.r0,
      turns: primary.N,
      pitch: primary.pitch,
      inclinationDegrees: primary.angle,
      tubeDiameter: primary.tube,
      baseHeight: secondary.z0 + primary.dz,
      strikeRail: null,
    },
    OPEN_AIR,
  );
  return { ...coil, topLoad: parts.topLoad ? coil.topLoad : [], primary: parts.primary ? coil.primary : [] };
}
