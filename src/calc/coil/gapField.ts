/** The field between a primary and the winding beside it. */
import { type Cylinder, cylinderGap, type RoundConductor } from "./conductors";
import { type ProfilePoint, profileVoltage } from "./modeProfile";

export interface PeakVoltages {
  /** V, largest of the primary's turns */
  primary: number;
  /** V at the top of the winding */
  top: number;
}

/**
 * V/m, mean over the shortest gap, largest of all turns. Cautiously, every turn is assumed to be at the full
 * voltage of the primary, or at that of its free end if unused turns step it up, against the winding's at its
 * height.
 * @param freeEndVoltage of the primary's free end, per volt from start to tap
 * @returns null without a turn, or if one touches the winding
 */
export function gapField(
  turns: readonly RoundConductor[],
  winding: Cylinder,
  profile: readonly ProfilePoint[],
  peak: PeakVoltages,
  freeEndVoltage: number,
): number | null {
  const fields = turns.map((turn) => {
    const voltage =
      peak.primary * Math.max(1, freeEndVoltage) + peak.top * profileVoltage(profile, turn.centreHeight);
    return voltage / cylinderGap(turn, winding);
  });
  return fields.length > 0 && fields.every((field) => field > 0) ? Math.max(...fields) : null;
}
