/** One burst of a design, with its spark and without. */
import { simulateBurst } from "../../calc/circuit/burst";
import { type BurstDrive, burstDrive } from "../../calc/circuit/burstDrive";
import type { BurstResult } from "../../calc/circuit/burstResult";
import type { BurstOptions } from "../../calc/circuit/burstRun";
import type { Network } from "../../calc/circuit/network";
import { noLoadBusVoltage } from "../../calc/circuit/rectifier";
import type { DesignParts } from "../../calc/design-parts";
import type { MutualsAtTap, PrimaryCircuit } from "../primary/primaryStages";
import { networkOf, sparkLoad } from "../response/coupledNetwork";
import type { SecondaryCircuit } from "../secondary/secondaryCircuit";
import { BURST, guarded } from "../solvable";
import { stage } from "../stage";

/** The parts of a design that a burst reads beyond its circuits. */
export interface BurstParts {
  drive: DesignParts["drive"];
  spark: DesignParts["spark"];
  /** s */
  onTime: number;
}

/** What a burst is simulated from. */
export interface BurstCase {
  /** without the switches, which come with the drive */
  network: Network;
  drive: BurstDrive;
  options: BurstOptions;
}

/** Where a fixed frequency is wanted and none is given, the primary's own resonance. */
function withFrequency(drive: DesignParts["drive"], { resonance }: PrimaryCircuit): DesignParts["drive"] {
  const { commutation } = drive;
  return { ...drive, commutation: { ...commutation, frequency: commutation.frequency ?? resonance } };
}

function growthOf({ spark }: BurstParts, breakoutVoltage: number | null): BurstOptions["growth"] {
  if (spark.growth === "full from the start") return undefined;
  return { breakoutVoltage: breakoutVoltage ?? 0, rate: spark.growthRate, length: spark.length };
}

/**
 * @param breakoutVoltage V, where a growing spark begins; null where the design has no top load
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
    network: networkOf(withoutSwitches, secondary, mutuals, load),
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

/** Null where there is none, or where it rings on for longer than it can be followed. */
export function runBurst({ network, drive, options }: BurstCase): BurstResult | null {
  const result = simulateBurst(network, drive, options);
  return result && !result.cutShort ? result : null;
}

export interface Bursts {
  loaded: { case: BurstCase; result: BurstResult };
  unloaded: { case: BurstCase; result: BurstResult };
}

export const burstStage = guarded(
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
