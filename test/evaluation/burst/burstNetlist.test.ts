/** Bursts of whole designs against the transient analysis of ngspice, which runs the exported netlist. */
import { describe, expect, it } from "vitest";
import type { BurstCase } from "../../../src/calc/burst/burstCase";
import type { BurstDrive } from "../../../src/calc/burst/burstDrive";
import { burstNetlist } from "../../../src/calc/burst/burstNetlist";
import { type BurstResult, runningPole } from "../../../src/calc/burst/burstResult";
import { simulateBurst } from "../../../src/calc/burst/stepper";
import type { Network } from "../../../src/calc/circuit/network";
import { type PolePair, polePair } from "../../../src/calc/circuit/poles";
import type { Design } from "../../../src/design/design";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { designBursts } from "../../../src/evaluation/burst/burstStage";
import { largest, simulate } from "../../calc/circuit/simulator";
import { randomDesigns } from "../randomDesigns";

const designs: { name: string; design: Design; index: number }[] = [
  pierHallLeft,
  pierHallRight,
  ...randomDesigns(10),
].map((design, index) => ({ name: `${index + 1}, ${design.title}`, design, index }));

/** A design's burst with its spark, all of it from the start. */
function caseOf(design: Design): BurstCase {
  const bursts = designBursts(design);
  if (!bursts) throw new Error("the design has no solution");
  return bursts.loaded.case;
}

/** The over-current limit in its only form that an on-time can stand for. */
function ending(drive: BurstDrive): BurstDrive {
  return { ...drive, overCurrentAction: "end burst" };
}

function burst(network: Network, drive: BurstDrive): BurstResult {
  const result = simulateBurst(network, drive);
  if (!result) throw new Error("the burst was refused");
  return result;
}

function unloadedPoles(network: Network): PolePair {
  const poles = polePair({ ...network, load: null });
  if (!poles) throw new Error("the network has no poles");
  return poles;
}

/** Deviations of both peaks from ngspice; the netlist has no limit, its on-time ends where the drive did. */
async function deviations(network: Network, drive: BurstDrive): Promise<[current: number, voltage: number]> {
  const { driveEnd, peakPrimaryCurrent, peakTopVoltage } = burst(network, drive);
  const until = 1.05 * Math.max(driveEnd, peakPrimaryCurrent.time, peakTopVoltage.time);
  const column = await simulate(burstNetlist(network, { ...drive, onTime: driveEnd }, { until }));
  return [
    peakPrimaryCurrent.value / largest(column("i(vsense)")) - 1,
    peakTopVoltage.value / largest(column("v(top)")) - 1,
  ];
}

function atFixedFrequency(design: Design, pole: keyof PolePair): { network: Network; drive: BurstDrive } {
  const { network, drive } = caseOf(design);
  const { frequency } = unloadedPoles(network)[pole];
  const commutation = { ...drive.commutation, mode: "fixed frequency" as const, frequency };
  return { network, drive: ending({ ...drive, commutation }) };
}

/** With feedback from the current, the tap moved by some turns. */
function withFeedback(design: Design, moved = 0): { network: Network; drive: BurstDrive } {
  const primary = { ...design.primary, tap: design.primary.tap + moved };
  const { network, drive } = caseOf({ ...design, primary });
  const commutation = { ...drive.commutation, mode: "primary current" as const, frequency: null };
  return { network, drive: ending({ ...drive, commutation }) };
}

function finalPole(design: Design, moved: number): keyof PolePair | null {
  const { network, drive } = withFeedback(design, moved);
  const last = burst(network, drive).runningFrequency.at(-1);
  return last ? runningPole(last.frequency, unloadedPoles(network)) : null;
}

/** Turns on either side within which the burst must run at one and the same pole. */
const FROM_FLIP = 0.1;
const FIRST_HALF_CYCLES = 10;

/** Near a tap where the running pole flips, the first ten half cycles are compared: after those the result jumps. */
function comparableOnTime(design: Design): number {
  const { network, drive } = withFeedback(design);
  const [below, here, above] = [-FROM_FLIP, 0, FROM_FLIP].map((moved) => finalPole(design, moved));
  if (below === here && above === here) return drive.onTime;
  const tenth = burst(network, drive).halfCycles[FIRST_HALF_CYCLES - 1];
  return tenth ? Math.min(tenth.to, drive.onTime) : drive.onTime;
}

describe("a burst in ngspice", () => {
  it.each(designs)(
    "has our peaks within half a per cent at a fixed frequency: $name",
    async ({ design, index }) => {
      const { network, drive } = atFixedFrequency(design, index % 2 === 0 ? "lower" : "upper");
      for (const deviation of await deviations(network, drive))
        expect(Math.abs(deviation)).toBeLessThan(5e-3);
    },
  );

  it.each(designs)(
    "has our peaks within one per cent with feedback from the current: $name",
    async ({ design }) => {
      const { network, drive } = withFeedback(design);
      const compared = { ...drive, onTime: comparableOnTime(design) };
      for (const deviation of await deviations(network, compared))
        expect(Math.abs(deviation)).toBeLessThan(1e-2);
    },
  );
});
