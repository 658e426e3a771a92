/** The coupled network of a design. */
import type { Spark } from "../design-parts";
import type { Network, SparkLoad } from "./network";
import { secondaryPole } from "./poles";
import { loopResistance, type PrimaryCircuit } from "./primaryCircuit";
import type { MutualsAtTap } from "./primaryMutuals";
import type { SecondaryCircuit } from "./secondaryCircuit";

/** Load of a spark of a length at the top; null for none. */
export function sparkLoad(spark: Spark, length = spark.length): SparkLoad | null {
  const capacitance = spark.capacitancePerLength * length;
  return capacitance > 0 ? { resistance: spark.resistance, capacitance, topology: spark.topology } : null;
}

/** Primary, modes and spark as one network. */
export function coupledNetwork(
  primary: PrimaryCircuit,
  secondary: Pick<SecondaryCircuit, "modes">,
  mutuals: MutualsAtTap,
  load: SparkLoad | null,
): Network {
  return {
    primary: {
      inductance: primary.inductance,
      resistance: loopResistance(primary.resistance),
      capacitance: primary.capacitance,
    },
    modes: secondary.modes.map(({ inductance, capacitance, resistance }, index) => ({
      inductance,
      capacitance,
      resistance,
      mutual: mutuals.modes[index],
    })),
    load,
  };
}

/** Natural frequency of the secondary with a spark load, primary open, Hz. */
export function loadedResonance(secondary: Pick<SecondaryCircuit, "modes">, load: SparkLoad | null): number {
  if (!load) return secondary.modes[0].resonance;
  const open: Network = {
    primary: { inductance: 1, resistance: 0, capacitance: 1 },
    modes: secondary.modes.map(({ inductance, capacitance, resistance }) => ({
      inductance,
      capacitance,
      resistance,
      mutual: 0,
    })),
    load,
  };
  return secondaryPole(open)?.frequency ?? secondary.modes[0].resonance;
}
