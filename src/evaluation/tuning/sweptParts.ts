import type { DesignParts } from "../../calc/design-parts";

/** The parts of a design that its bursts depend on, at any tap; all else is set to fixed values for comparison. */
export function sweptParts(design: DesignParts): DesignParts {
  const { air, room, secondary, topLoad, primary, tank, drive, interrupter, spark, corrections } = design;
  return {
    air,
    room: { ...room, audienceDistance: null },
    secondary: { ...secondary, measuredResonance: null },
    topLoad,
    primary: { ...primary, tap: primary.turns },
    tank: { ...tank, wantedCapacitance: null, unitCost: null },
    drive,
    interrupter: { ...interrupter, repetitionRate: 1, shortestGap: 0, dutyLimit: 1, dutyWindow: 1 },
    spark,
    tuningAim: { kind: "most energy" },
    corrections,
  };
}
