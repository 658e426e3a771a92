/** Mains current and bus under mean powers, as a table. */

import type { DesignParts } from "../design-parts";
import type { SupplyPoint } from "../music/coilLoad";
import { noLoadBusVoltage, rectifierUnderLoad } from "./rectifier";

type SupplyParts = Pick<DesignParts, "drive">;

const POWERS = 32;

/** The supply under powers up to that of the worst duty, more closely spaced at low power. */
export function supplyPoints({ drive }: SupplyParts, most: number): SupplyPoint[] {
  const { supply, reservoirCapacitance } = drive;
  const loaded = Array.from({ length: POWERS }, (_, index) => {
    const power = most * ((index + 1) / POWERS) ** 2;
    const { mainsCurrent, lowestVoltage } = rectifierUnderLoad({ supply, reservoirCapacitance, power });
    return { power, mainsCurrent, busVoltage: lowestVoltage };
  });
  return [{ power: 0, mainsCurrent: 0, busVoltage: noLoadBusVoltage(supply) }, ...loaded];
}

/** s: capacitance times the inner resistance, which is the fall of the mean voltage by the mean current. */
export function busLag({ drive }: SupplyParts, supply: readonly SupplyPoint[]): number {
  const [rest, loaded] = [supply[0], supply[Math.ceil(POWERS / 2)]];
  const current = loaded.power / loaded.busVoltage;
  const resistance = current > 0 ? (rest.busVoltage - loaded.busVoltage) / current : 0;
  return Math.max(1e-6, resistance * drive.reservoirCapacitance);
}

/** W that brings a falling or rising quantity of the supply to a limit; Infinity if no power of the table does. */
export function powerAt(supply: readonly SupplyPoint[], passed: (point: SupplyPoint) => number): number {
  const upper = supply.findIndex((point) => passed(point) > 0);
  if (upper < 0) return Number.POSITIVE_INFINITY;
  if (upper === 0) return 0;
  const [a, b] = [supply[upper - 1], supply[upper]];
  return a.power + (passed(a) / (passed(a) - passed(b))) * (b.power - a.power);
}
