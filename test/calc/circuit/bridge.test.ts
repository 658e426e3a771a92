import { describe, expect, it } from "vitest";
import {
  railCapacitance,
  railSeriesResistance,
  railVoltage,
  reservoirShare,
  switchesInPath,
} from "../../../src/calc/circuit/bridge";

const bus = { busVoltage: 320, reservoirCapacitance: 2e-3, reservoirSeriesResistance: 0.04 };
const full = { ...bus, bridge: "full" as const };
const half = { ...bus, bridge: "half" as const };

describe("a full bridge", () => {
  it("drives with the whole bus, through two switches, out of the whole reservoir", () => {
    expect(railVoltage(full)).toBe(320);
    expect(switchesInPath(full)).toBe(2);
    expect(railCapacitance(full)).toBe(2e-3);
    expect(railSeriesResistance(full)).toBe(0.04);
    expect(reservoirShare(full)).toBe(1);
  });
});

describe("a half bridge", () => {
  it("drives with half the bus, through one switch, out of one of two capacitors in series", () => {
    expect(railVoltage(half)).toBe(160);
    expect(switchesInPath(half)).toBe(1);
    expect(railCapacitance(half)).toBe(4e-3);
    expect(railSeriesResistance(half)).toBe(0.02);
    expect(reservoirShare(half)).toBe(0.5);
  });

  it("has two rails whose capacitors in series make up the reservoir", () => {
    const rail = railCapacitance(half);
    expect((rail * rail) / (rail + rail)).toBeCloseTo(half.reservoirCapacitance, 12);
    expect(2 * railSeriesResistance(half)).toBeCloseTo(half.reservoirSeriesResistance, 12);
  });
});
