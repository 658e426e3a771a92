import { describe, expect, it } from "vitest";
import { burstDrive } from "../../../src/calc/burst/burstDrive";
import { simulateBurst } from "../../../src/calc/burst/stepper";
import type { Network } from "../../../src/calc/circuit/network";
import { gateDrive, switchLosses } from "../../../src/calc/circuit/switchLosses";
import type { Drive } from "../../../src/calc/design-parts";
import { pierHallLeft } from "../../../src/design/examples";

const coil: Network = {
  primary: { inductance: 1.2e-5, capacitance: 1.7e-7, resistance: 0.04 },
  modes: [{ inductance: 0.117, capacitance: 1.8e-11, resistance: 320, mutual: 1.8e-4 }],
  load: { resistance: 2.2e5, capacitance: 3.5e-12, topology: "series" },
};

const drive: Drive = pierHallLeft.drive;

function burstOf(part: Partial<Drive> = {}) {
  return simulateBurst(coil, burstDrive({ ...drive, ...part }, 325, 1.2e-4))!;
}

describe("the losses of a switch", () => {
  it("of all four make the burst's account", () => {
    const burst = burstOf();
    const { conductionEnergy, turnOffEnergy } = switchLosses(drive, burst, 120);
    const { switches, turnOff } = burst.energy;
    expect((4 * conductionEnergy) / switches).toBeCloseTo(1, 0);
    expect(4 * turnOffEnergy).toBeGreaterThan(0.5 * turnOff);
    expect(4 * turnOffEnergy).toBeLessThan(1.5 * turnOff);
  });

  it("heat the junction by the mean power, and more within the burst", () => {
    const { power, rise, meanJunction, peakJunction, margin } = switchLosses(drive, burstOf(), 120);
    const resistance = drive.switch.thermal.reduce((sum, element) => sum + element.resistance, 0);
    expect(rise.mean / (power * resistance)).toBeCloseTo(1, 6);
    expect(peakJunction).toBeGreaterThan(meanJunction);
    expect(margin).toBeCloseTo(drive.switch.junctionLimit - peakJunction, 9);
  });

  it("rise with the repetition rate, and are one burst's own without repetition", () => {
    const burst = burstOf();
    expect(switchLosses(drive, burst, 240).rise.peak).toBeGreaterThan(
      switchLosses(drive, burst, 120).rise.peak,
    );
    const { power, rise } = switchLosses(drive, burst, 0);
    expect(power).toBe(0);
    expect(rise.peak).toBeCloseTo(rise.firstBurst, 9);
  });

  it("are shared by devices in parallel", () => {
    const parallel = { ...drive, switch: { ...drive.switch, parallelDevices: 2 } };
    const [one, two] = [
      switchLosses(drive, burstOf(), 120),
      switchLosses(parallel, burstOf({ switch: parallel.switch }), 120),
    ];
    expect(two.conductionEnergy).toBeLessThan(0.6 * one.conductionEnergy);
    expect(two.peakCurrent / one.peakCurrent).toBeCloseTo(0.5, 1);
  });

  it("are nothing in a burst without on-time", () => {
    const burst = simulateBurst(coil, burstDrive(drive, 325, 0))!;
    expect(switchLosses(drive, burst, 120).rise.peak).toBe(0);
  });
});

describe("a gate", () => {
  it("takes charge times swing a cycle", () => {
    const burst = burstOf();
    const { energyPerCycle, power, peakCurrent } = gateDrive(drive, burst, 100);
    expect(energyPerCycle).toBeCloseTo(drive.switch.gateCharge * drive.switch.gateVoltage, 15);
    expect(power).toBeCloseTo(burst.gates.length * 2 * energyPerCycle * 100, 9);
    expect(peakCurrent).toBeCloseTo(drive.switch.gateVoltage / drive.switch.gateResistance, 9);
  });
});
