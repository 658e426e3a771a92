import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BurstDrive } from "../../../src/calc/burst/burstDrive";
import { burstNetlist } from "../../../src/calc/burst/burstNetlist";
import { simulateBurst } from "../../../src/calc/burst/stepper";
import type { Network } from "../../../src/calc/circuit/network";
import { network, primaryFrequency, STIFF_DRIVE } from "../circuit/drivenNetworks";
import { largest, simulate } from "../circuit/simulator";

function driveOf(of: Network, part: Partial<BurstDrive>): BurstDrive {
  const period = 1 / primaryFrequency(of);
  const commutation = {
    mode: "primary current" as const,
    leadTime: 0.05 * period,
    delay: 0.03 * period,
    deadTime: 0.02 * period,
    frequency: null,
  };
  return {
    ...STIFF_DRIVE,
    reservoirCapacitance: 2e-3,
    reservoirSeriesResistance: 0.01,
    onStateVoltage: 1,
    onStateResistance: 5e-3,
    commutation,
    onTime: 10 * period,
    ...part,
  };
}

/** Deviations of peak primary current and top voltage from ngspice on the exported netlist. */
async function deviations(of: Network, drive: BurstDrive): Promise<[number, number]> {
  const ours = simulateBurst(of, drive)!;
  const until = Math.max(1.2 * drive.onTime, 1.05 * ours.peakTopVoltage.time);
  const column = await simulate(burstNetlist(of, drive, { until }));
  return [
    ours.peakPrimaryCurrent.value / largest(column("i(vsense)")) - 1,
    ours.peakTopVoltage.value / largest(column("v(top)")) - 1,
  ];
}

/** A network drawn from a seed. */
function drawn(seed: number): Network {
  return fc.sample(network, { numRuns: 1, seed })[0];
}

describe("the netlist of a burst", () => {
  it("agrees with ngspice within 1 % where the feedback has neither delay nor lead", async () => {
    const of = drawn(13);
    const commutation = { ...STIFF_DRIVE.commutation };
    for (const deviation of await deviations(of, driveOf(of, { commutation })))
      expect(Math.abs(deviation)).toBeLessThan(1e-2);
  });

  it("is one transient analysis without a control block", () => {
    const of = drawn(14);
    const text = burstNetlist(of, driveOf(of, {}), { title: "Left\ncoil" });
    expect(text.split("\n")[0]).toBe("* Left coil: one burst");
    expect(text.match(/^\.tran/gm)).toHaveLength(1);
    expect(text).not.toContain(".control");
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
  });
});
