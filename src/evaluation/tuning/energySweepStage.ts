/** A design's bursts swept over tap and on-time, and the tap that gives the spark most energy. */
import {
  allowedCurrent,
  type EnergySweep,
  type SweptCoil,
  sweepBursts,
} from "../../calc/circuit/energySweep";
import { primaryCircuitParts } from "../../calc/circuit/primaryCircuit";
import type { DesignParts } from "../../calc/design-parts";
import { areSolvable, BURST, PRIMARY_CIRCUIT } from "../solvable";
import { solveCoil } from "../solvedCoil";
import { stage } from "../stage";
import { breakoutVoltage, topLoadResult } from "../topLoad/topLoadStage";
import { sweptParts } from "./sweptParts";

function sweptCoil(design: DesignParts): SweptCoil | null {
  if (!areSolvable(design, [...BURST, ...PRIMARY_CIRCUIT])) return null;
  const { field, modes, secondary, solution, mutuals: table } = solveCoil(design);
  if (!secondary || !solution || !table) return null;
  const breakout = breakoutVoltage(topLoadResult(design, field, modes));
  const { drive, spark } = design;
  return {
    parts: { drive, spark },
    circuit: primaryCircuitParts(design),
    solution,
    table,
    secondary,
    breakout,
    allowed: allowedCurrent(design),
  };
}

/**
 * Sweeps whole bursts over all taps. It takes long, so it is a generator: after each burst it yields the share that is
 * done, 0 … 1, and a caller cancels it by not continuing.
 * @param onTimes "all": the design's own and others up to the interrupter's longest; "own": the design's own only
 * @returns null if secondary or primary has no solution
 */
export function* energySweep(
  design: DesignParts,
  onTimes: "all" | "own" = "all",
): Generator<number, EnergySweep | null> {
  const coil = sweptCoil(design);
  return coil && (yield* sweepBursts(coil, design.interrupter, onTimes));
}

const mostEnergyStage = stage(sweptParts, (parts): number | null => {
  const steps = energySweep(parts, "own");
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value?.mostEnergyTap ?? null;
});

/**
 * The tap with most energy into the spark at the design's own on-time, turns; null for another tuning aim, and if no
 * tap gives any within the ratings of switches and bank. It takes about sixty bursts: too slow for every frame.
 */
export function mostEnergyTap(design: DesignParts): number | null {
  return design.tuningAim.kind === "most energy" ? mostEnergyStage(design) : null;
}
