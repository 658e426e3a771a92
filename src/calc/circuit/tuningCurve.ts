/** The poles of the coupled network and the coupling, against the tap. */
import type { PrimarySolution } from "../coil/primary";
import type { SectionMutuals } from "../coil/sectionMutuals";
import { coupledNetwork } from "./coupledNetwork";
import { losslessPoles } from "./losslessPoles";
import type { Network, SparkLoad } from "./network";
import { type PolePair, polePair } from "./poles";
import { type PrimaryCircuitParts, primaryCircuitAt } from "./primaryCircuit";
import { couplings, mutualsAtTap } from "./primaryMutuals";
import type { SecondaryCircuit } from "./secondaryCircuit";

export interface TuningPoint {
  tap: number;
  primaryResonance: number;
  /** lossless, unloaded */
  lowerPole: number;
  upperPole: number;
  loadedLowerPole: number;
  loadedUpperPole: number;
  coupling: number;
}

const FEWEST_POINTS = 24;
const POINTS_PER_TURN = 6;
const MOST_POINTS = 72;

/** `steps` equal steps over the conductor, from the first turn on, because a shorter primary is not a coil. */
export function tapsAlong(turns: number, steps: number): number[] {
  const first = Math.min(1, turns / 2);
  return Array.from({ length: steps + 1 }, (_, index) =>
    index === steps ? turns : first + ((turns - first) * index) / steps,
  );
}

function curveTaps(turns: number): number[] {
  const steps = Math.min(MOST_POINTS, Math.max(FEWEST_POINTS, Math.round(turns * POINTS_PER_TURN)));
  return tapsAlong(turns, steps);
}

/** The poles, searched for from those without loss and load. */
function polesNear(network: Network, { lower, upper }: { lower: number; upper: number }): PolePair | null {
  return polePair(network, [2 * Math.PI * lower, 2 * Math.PI * upper]) ?? polePair(network);
}

/** Points along the conductor; taps at which the network has no two poles are left out. */
export function tuningCurve(
  solution: PrimarySolution,
  table: SectionMutuals,
  secondary: SecondaryCircuit,
  circuit: PrimaryCircuitParts,
  load: SparkLoad | null,
): TuningPoint[] {
  return curveTaps(solution.tube.turns).flatMap((tap): TuningPoint[] => {
    const primary = primaryCircuitAt(solution, tap, circuit);
    const mutuals = primary && mutualsAtTap(table, secondary, tap);
    if (!primary || !mutuals) return [];
    const network = coupledNetwork(primary, secondary, mutuals, load);
    const bare = losslessPoles(network);
    const loaded = polesNear(network, bare);
    if (!loaded) return [];
    return [
      {
        tap,
        primaryResonance: primary.resonance,
        lowerPole: bare.lower,
        upperPole: bare.upper,
        loadedLowerPole: loaded.lower.frequency,
        loadedUpperPole: loaded.upper.frequency,
        coupling: couplings(mutuals, primary, secondary).atResonance,
      },
    ];
  });
}
