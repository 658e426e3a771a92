/** What bursts cost: one of 150 µs with three modes, sixty over the tap; ngspice on the same burst beside them. */
import { type BurstCase, burstCase } from "../../src/calc/burst/burstCase";
import { burstNetlist } from "../../src/calc/burst/burstNetlist";
import { simulateBurst } from "../../src/calc/burst/stepper";
import { primaryCircuitAt, primaryCircuitParts } from "../../src/calc/circuit/primaryCircuit";
import { mutualsAtTap } from "../../src/calc/circuit/primaryMutuals";
import type { DesignParts } from "../../src/calc/design-parts";
import { pierHallLeft } from "../../src/design/examples";
import { designBursts } from "../../src/evaluation/burst/burstStage";
import { solveCoil } from "../../src/evaluation/solvedCoil";
import { breakoutVoltage, topLoadResult } from "../../src/evaluation/topLoad/topLoadStage";
import type { Bench } from "./harness";
import { ngspice } from "./ngspice";

const ON_TIME = 150e-6;
const BURSTS = 60;
/** A, above what any of them reaches */
const NO_LIMIT = 1e5;
type Growth = DesignParts["spark"]["growth"];

/** The example with a burst that no limit ends early. */
function design(growth: Growth): typeof pierHallLeft {
  const { drive, interrupter, spark } = pierHallLeft;
  return {
    ...pierHallLeft,
    drive: { ...drive, overCurrentLimit: NO_LIMIT },
    interrupter: { ...interrupter, onTime: ON_TIME },
    spark: { ...spark, growth },
  };
}

function theCase(growth: Growth): BurstCase {
  const bursts = designBursts(design(growth));
  if (!bursts) throw new Error("the example has no burst");
  return bursts.loaded.case;
}

/** The bus a little higher each time. */
function run({ network, drive, options }: BurstCase, index: number): unknown {
  const busVoltage = drive.busVoltage * (1 + 1e-5 * index);
  return simulateBurst(network, { ...drive, busVoltage }, options);
}

/** Sixty bursts, each with the network of its own tap. */
function overTheTap(growth: Growth): (index: number) => unknown {
  const swept = design(growth);
  const { field, modes, secondary, solution, mutuals: table } = solveCoil(swept);
  if (!secondary || !solution || !table) throw new Error("the example has no solution");
  const breakout = breakoutVoltage(topLoadResult(swept, field, modes));
  const parts = { drive: swept.drive, spark: swept.spark, onTime: ON_TIME };
  const circuit = primaryCircuitParts(swept);
  const at = (tap: number): unknown => {
    const primary = primaryCircuitAt(solution, tap, circuit);
    const mutuals = mutualsAtTap(table, secondary, tap);
    if (!primary || !mutuals) throw new Error(`no primary at turn ${tap}`);
    const { network, drive, options } = burstCase(parts, primary, secondary, mutuals, breakout, true);
    return simulateBurst(network, drive, { ...options, waveform: false });
  };
  const { turns } = swept.primary;
  return (index) =>
    Array.from({ length: BURSTS }, (_, each) => at(1 + ((turns - 1) * (each + 0.5 + 0.01 * index)) / BURSTS));
}

const ONE_BURST = "a burst of 150 µs, three modes, spark full from the start";
const NO_CIRCUIT = "* one resistor\nV1 a 0 1\nR1 a 0 1\n.tran 1u 2u\n.end\n";

export async function burstBenches(): Promise<Bench[]> {
  const [full, growing] = [theCase("full from the start"), theCase("with the burst")];
  const netlist = burstNetlist(full.network, full.drive);
  const beside = { name: ONE_BURST, shortName: "our burst" };
  const seldom = { goal: null, warmUp: 1, runs: 5 };
  const sweep = { goal: 300, warmUp: 3, runs: 15 };
  return [
    { name: ONE_BURST, goal: 5, run: (index) => run(full, index) },
    { name: "the same, spark growing with the burst", goal: 5, run: (index) => run(growing, index) },
    { name: "ngspice on its netlist", ...seldom, beside, run: await ngspice(netlist) },
    { name: "ngspice on one resistor", ...seldom, run: await ngspice(NO_CIRCUIT) },
    { name: "60 bursts over the tap, full from the start", ...sweep, run: overTheTap("full from the start") },
    { name: "60 bursts over the tap, growing", ...sweep, run: overTheTap("with the burst") },
  ];
}
