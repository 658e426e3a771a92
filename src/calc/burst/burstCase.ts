/** The inputs of the simulation of a design's burst. */
import { coupledNetwork, sparkLoad } from "../circuit/coupledNetwork";
import type { Network } from "../circuit/network";
import type { PrimaryCircuit } from "../circuit/primaryCircuit";
import type { MutualsAtTap } from "../circuit/primaryMutuals";
import { noLoadBusVoltage } from "../circuit/rectifier";
import type { SecondaryCircuit } from "../circuit/secondaryCircuit";
import type { DesignParts } from "../design-parts";
import { type BurstDrive, burstDrive } from "./burstDrive";
import type { BurstResult } from "./burstResult";
import type { BurstOptions } from "./stepper";
import { simulateBurst } from "./stepper";

/** The parts of a design that a burst reads beyond its circuits. */
export interface BurstParts {
  drive: DesignParts["drive"];
  spark: DesignParts["spark"];
  /** s */
  onTime: number;
}

/** The inputs of the simulation of a burst. */
export interface BurstCase {
  /** without the switches, which come with the drive */
  network: Network;
  drive: BurstDrive;
  options: BurstOptions;
}

/** The primary's own resonance is used if a fixed frequency is selected and none is given. */
function withFrequency(drive: DesignParts["drive"], { resonance }: PrimaryCircuit): DesignParts["drive"] {
  const { commutation } = drive;
  return { ...drive, commutation: { ...commutation, frequency: commutation.frequency ?? resonance } };
}

function growthOf({ spark }: BurstParts, breakoutVoltage: number | null): BurstOptions["growth"] {
  if (spark.growth === "full from the start") return undefined;
  return { breakoutVoltage: breakoutVoltage ?? 0, rate: spark.growthRate, length: spark.length };
}

/**
 * @param breakoutVoltage V, at which a growing spark begins; null if the design has no top load
 * @param loaded with the spark
 */
export function burstCase(
  parts: BurstParts,
  primary: PrimaryCircuit,
  secondary: SecondaryCircuit,
  mutuals: MutualsAtTap,
  breakoutVoltage: number | null,
  loaded: boolean,
): BurstCase {
  const load = loaded ? sparkLoad(parts.spark, parts.spark.length) : null;
  const withoutSwitches = { ...primary, resistance: { ...primary.resistance, switches: 0 } };
  return {
    network: coupledNetwork(withoutSwitches, secondary, mutuals, load),
    drive: burstDrive(
      withFrequency(parts.drive, primary),
      noLoadBusVoltage(parts.drive.supply),
      parts.onTime,
    ),
    options: {
      bankResistance: primary.resistance.bank,
      growth: load ? growthOf(parts, breakoutVoltage) : undefined,
      baseCurrentRatios: secondary.modes.map(
        ({ baseCurrent, resonance, capacitance }) => baseCurrent / (2 * Math.PI * resonance * capacitance),
      ),
    },
  };
}

/** Null if there is none, or if it rings for longer than can be simulated. */
export function runBurst({ network, drive, options }: BurstCase): BurstResult | null {
  const result = simulateBurst(network, drive, options);
  return result && !result.cutShort ? result : null;
}

/** One burst with the spark and one without. */
export interface Bursts {
  loaded: { case: BurstCase; result: BurstResult };
  unloaded: { case: BurstCase; result: BurstResult };
}
