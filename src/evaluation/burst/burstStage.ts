/** One burst of a design, with its spark and without. */
import { type BurstParts, type Bursts, burstCase, runBurst } from "../../calc/burst/burstCase";
import type { PrimaryCircuit } from "../../calc/circuit/primaryCircuit";
import type { MutualsAtTap } from "../../calc/circuit/primaryMutuals";
import type { SecondaryCircuit } from "../../calc/circuit/secondaryCircuit";
import type { DesignParts } from "../../calc/design-parts";
import { BURST, guarded } from "../solvable";
import { type SolvedCoil, solveCoil } from "../solvedCoil";
import { stage } from "../stage";
import { breakoutVoltage, topLoadResult } from "../topLoad/topLoadStage";

const burstStage = guarded(
  BURST,
  null,
  stage(
    ({ drive, spark, interrupter }): BurstParts => ({ drive, spark, onTime: interrupter.onTime }),
    (
      parts,
      primary: PrimaryCircuit | null,
      secondary: SecondaryCircuit | null,
      mutuals: MutualsAtTap | null,
      breakoutVoltage: number | null,
    ): Bursts | null => {
      if (!primary || !secondary || !mutuals) return null;
      const [loaded, unloaded] = [true, false].map((withSpark) =>
        burstCase(parts, primary, secondary, mutuals, breakoutVoltage, withSpark),
      );
      const bare = runBurst(unloaded);
      const sparked = bare && loaded.network.load ? runBurst(loaded) : bare;
      if (!bare || !sparked) return null;
      return { loaded: { case: loaded, result: sparked }, unloaded: { case: unloaded, result: bare } };
    },
  ),
);

/** One burst with the design's spark and one without; null if a circuit has no solution. */
export function designBursts(design: DesignParts, coil: SolvedCoil = solveCoil(design)): Bursts | null {
  const breakout = breakoutVoltage(topLoadResult(design, coil.field, coil.modes));
  const mutuals = coil.coupling?.mutuals ?? null;
  return burstStage(design, coil.primary, coil.secondary, mutuals, breakout);
}
