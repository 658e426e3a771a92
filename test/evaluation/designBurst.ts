/** What a design gives its burst. */
import type { BurstDrive } from "../../src/calc/circuit/burstDrive";
import { burstDrive } from "../../src/calc/circuit/burstDrive";
import type { BurstOptions } from "../../src/calc/circuit/burstRun";
import type { Network } from "../../src/calc/circuit/network";
import { noLoadBusVoltage } from "../../src/calc/circuit/rectifier";
import type { Design } from "../../src/design/design";
import { evaluateField, responseNetwork } from "../../src/evaluation/evaluate";

export interface DesignBurst {
  /** primary resistance without the switches', which are the drive's */
  network: Network;
  drive: BurstDrive;
  options: BurstOptions;
}

/** Of a design that has a solution; throws for another. */
export function designBurst(design: Design): DesignBurst {
  const { losses, topLoad } = evaluateField(design);
  const network = responseNetwork(design, true);
  if (!network || !losses) throw new Error("the design has no solution");
  const { bank, switches } = losses.primary;
  const { primary } = network;
  const { spark, interrupter } = design;
  const growth = {
    breakoutVoltage: topLoad?.breakoutVoltage ?? 0,
    rate: spark.growthRate,
    length: spark.length,
  };
  return {
    network: { ...network, primary: { ...primary, resistance: primary.resistance - switches.resistance } },
    drive: burstDrive(design.drive, noLoadBusVoltage(design.drive.supply), interrupter.onTime),
    options: {
      bankResistance: bank.resistance,
      growth: spark.growth === "with the burst" ? growth : undefined,
    },
  };
}
