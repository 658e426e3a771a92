/** One burst of whole designs: what must hold of any, and of odd ones. */
import { describe, expect, it } from "vitest";
import type { BurstResult } from "../../../src/calc/burst/burstResult";
import { withValueAt } from "../../../src/design/changeAt";
import type { Design } from "../../../src/design/design";
import { pierHallLeft } from "../../../src/design/examples";
import { designBursts } from "../../../src/evaluation/burst/burstStage";
import { evaluate } from "../../../src/evaluation/evaluate";
import { few } from "../../properties";
import { randomDesigns } from "../randomDesigns";

type Changes = Record<string, unknown>;

function changed(design: Design, changes: Changes): Design {
  return Object.entries(changes).reduce((next, [path, value]) => withValueAt(next, path, value), design);
}

/** Both bursts of a design, with its spark and without. */
function burstsOf(design: Design): { loaded: BurstResult; unloaded: BurstResult } {
  const bursts = designBursts(design);
  if (!bursts) throw new Error("the design has no solution");
  return { loaded: bursts.loaded.result, unloaded: bursts.unloaded.result };
}

/** Paths of the numbers that are not finite. */
function notFinite(value: unknown, path = ""): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, child]) => notFinite(child, path ? `${path}.${key}` : key));
}

/** What is wrong with a burst's account: more than 0.1 % unexplained, a share below zero, steps without end. */
function faults({ cutShort, energy }: BurstResult): string[] {
  const { imbalance, ...shares } = energy;
  const below = Object.entries(shares).filter(([, joules]) => !(joules >= 0));
  return [
    ...below.map(([name, joules]) => `${name} is ${joules} J`),
    ...(Math.abs(imbalance) <= 1e-3 * energy.supplied ? [] : [`${imbalance} J of ${energy.supplied} J`]),
    ...(cutShort ? ["cut short"] : []),
  ];
}

function faultsOf(design: Design): string[] {
  const { loaded, unloaded } = burstsOf(design);
  return [...faults(loaded), ...faults(unloaded), ...notFinite(evaluate(design))];
}

describe("bursts of drawn designs", () => {
  it("account for their energy, and have no number that is not finite", () => {
    const wrong = randomDesigns(few(80), 41).flatMap((design, index) =>
      faultsOf(design).map((fault) => `${index}: ${fault}`),
    );
    expect(wrong).toEqual([]);
  });
});

/** High above the primary: no field line of it to speak of goes through the winding. */
const RAISED: Changes = { "secondary.baseHeight": 30, "topLoad.elements.0.centreHeight": 30.635 };
const NO_BUS: Changes = { "drive.supply.arrangement": "bench", "drive.supply.mainsVoltage": 0 };

const ODD: [string, Changes][] = [
  ["a shorted spark", { "spark.resistance": 0 }],
  ["no spark", { "spark.length": 0 }],
  ["a spark without capacitance", { "spark.capacitancePerLength": 0 }],
  ["a secondary out of the primary's reach", RAISED],
  ["no on-time", { "interrupter.onTime": 0 }],
  ["an on-time of a picosecond", { "interrupter.onTime": 1e-12 }],
  ["an on-time of many beats", { "interrupter.onTime": 2e-3 }],
  ["a bench supply at its least", { ...NO_BUS, "drive.supply.mainsVoltage": 10 }],
  ["a bench supply that is off", NO_BUS],
  ["a limit below the first peak", { "drive.overCurrentLimit": 1 }],
  ["a lead longer than a half cycle", { "drive.commutation.leadTime": 2e-5 }],
  ["a delay longer than a half cycle", { "drive.commutation.delay": 2e-5 }],
  ["a dead time longer than a half cycle", { "drive.commutation.deadTime": 2e-5 }],
  ["a dead time longer than the burst", { "drive.commutation.deadTime": 5e-3 }],
  ["a small reservoir", { "drive.reservoirCapacitance": 5e-5 }],
  ["the worst of reservoirs", { "drive.reservoirSeriesResistance": 2 }],
];

/** Every way of driving and loading. */
const WAYS: Changes[] = ["primary current", "fixed frequency"].flatMap((mode) =>
  ["end burst", "end half cycle"].flatMap((action) =>
    ["series", "parallel"].flatMap((topology) =>
      ["full from the start", "with the burst"].map((growth) => ({
        "drive.commutation.mode": mode,
        "drive.overCurrentAction": action,
        "drive.bridge": action === "end burst" ? "full" : "half",
        "spark.topology": topology,
        "spark.growth": growth,
      })),
    ),
  ),
);

describe("a design of an odd kind", () => {
  it.each(ODD)("has a burst that adds up, however driven and loaded: %s", (_, changes) => {
    const wrong = WAYS.flatMap((way) =>
      faultsOf(changed(pierHallLeft, { ...way, ...changes })).map(
        (fault) => `${Object.values(way)}: ${fault}`,
      ),
    );
    expect(wrong).toEqual([]);
  });

  const usual = burstsOf(pierHallLeft).loaded;
  const odd = (changes: Changes) => burstsOf(changed(pierHallLeft, changes));

  it("gives nothing to a shorted spark", () => {
    const { energy } = odd({ "spark.resistance": 0 }).loaded;
    expect(energy.spark).toBeLessThan(1e-2 * energy.supplied);
  });

  it("has one and the same burst with no spark and without", () => {
    const { loaded, unloaded } = odd({ "spark.length": 0 });
    expect(loaded).toEqual(unloaded);
    expect(loaded.energy.spark).toBe(0);
  });

  it("raises no voltage where the secondary is out of reach, and drives its primary alone", () => {
    const { peakTopVoltage, peakPrimaryCurrent, energy } = odd(RAISED).loaded;
    expect(peakTopVoltage.value).toBeLessThan(1e-3 * usual.peakTopVoltage.value);
    expect(energy.secondary + energy.spark).toBeLessThan(1e-6 * energy.supplied);
    expect(peakPrimaryCurrent.value).toBeGreaterThan(usual.peakPrimaryCurrent.value);
  });

  it.each<[string, Changes]>([
    ["on-time", { "interrupter.onTime": 0 }],
    ["bus voltage", NO_BUS],
  ])("does nothing with no %s", (_, changes) => {
    const { peakPrimaryCurrent, peakTopVoltage, energy, turnOffs } = odd(changes).loaded;
    expect([peakPrimaryCurrent.value, peakTopVoltage.value, energy.supplied]).toEqual([0, 0, 0]);
    expect(turnOffs.every(({ current }) => current === 0)).toBe(true);
  });

  it("ends within the first half cycle where the limit is below its peak", () => {
    const { gates, limitReachedAt, driveEnd } = odd({ "drive.overCurrentLimit": 1 }).loaded;
    expect(gates).toHaveLength(1);
    expect(limitReachedAt).toBeLessThan(driveEnd);
    expect(driveEnd).toBeLessThan(1e-6);
  });

  it.each<[string, number, Changes]>([
    ["lead", 0, { "drive.commutation.leadTime": 2e-5 }],
    ["dead time", 2e-5, { "drive.commutation.deadTime": 2e-5 }],
  ])(
    "goes on to the on-time's end with a %s longer than a half cycle, one pair at a time",
    (_, dead, changes) => {
      const { gates, driveEnd } = odd(changes).loaded;
      expect(driveEnd).toBeGreaterThan(0.8 * pierHallLeft.interrupter.onTime);
      gates.slice(1).forEach(({ from, polarity }, index) => {
        expect(from - gates[index].to).toBeGreaterThanOrEqual(dead * (1 - 1e-6));
        expect(polarity).toBe(-gates[index].polarity);
      });
    },
  );
});
