import { describe, expect, it } from "vitest";
import { withValueAt } from "../../../src/design/changeAt";
import type { Design } from "../../../src/design/design";
import { pierHallLeft } from "../../../src/design/examples";
import { evaluate } from "../../../src/evaluation/evaluate";
import { findingMessage } from "../../../src/evaluation/findings/findingMessage";
import { resultValue } from "../../../src/evaluation/register/register";

type Changes = Record<string, unknown>;

function changed(changes: Changes): Design {
  return Object.entries(changes).reduce(
    (design, [path, value]) => withValueAt(design, path, value),
    pierHallLeft,
  );
}

function codes(changes: Changes): string[] {
  return evaluate(changed(changes)).findings.map(({ code }) => code);
}

function resultOf(id: string, changes: Changes = {}): number {
  const value = resultValue(evaluate(changed(changes)), id);
  if (value === null) throw new Error(`${id} has no value`);
  return value;
}

/** Limits that are fields: the finding comes as the field passes the result, and not before. */
const FIELD_LIMITS: [code: string, field: string, result: string, changes?: Changes][] = [
  ["peak-current-over-rating", "drive.switch.pulseCurrentRating", "drive.switchPeakCurrent"],
  ["bus-over-switch-rating", "drive.switch.voltageRating", "drive.busVoltage"],
  ["junction-over-limit", "drive.switch.junctionLimit", "drive.junctionTemperature"],
  ["bank-voltage-over-rating", "tank.unit.dcVoltage", "tank.unitPeakVoltage"],
  ["bank-peak-current-over-rating", "tank.unit.peakCurrent", "tank.unitPeakCurrent"],
  ["bank-rms-current-over-rating", "tank.unit.rmsCurrent", "tank.unitRmsCurrent"],
  ["mains-circuit-overloaded", "drive.supply.circuitCurrent", "drive.mainsCurrent"],
  [
    "current-transformer-saturates",
    "drive.currentTransformer.saturationFluxDensity",
    "drive.coreFluxDensity",
  ],
  ["duty-over-limit", "interrupter.dutyLimit", "drive.duty"],
];

describe("the rules of the drive", () => {
  it.each(FIELD_LIMITS)("judge %s on both sides of its limit", (code, field, result) => {
    const value = resultOf(result);
    expect(codes({ [field]: value * 1.001 })).not.toContain(code);
    expect(codes({ [field]: value * 0.999 })).toContain(code);
  });

  it("warn of a junction from 20 K below its limit, common practice", () => {
    const junction = resultOf("drive.junctionTemperature");
    expect(codes({ "drive.switch.junctionLimit": junction + 20.1 })).not.toContain("junction-near-limit");
    expect(codes({ "drive.switch.junctionLimit": junction + 19.9 })).toContain("junction-near-limit");
  });

  it("note a tap that is not the suggested one, and none that is tuned", () => {
    const tuned = evaluate(pierHallLeft).tuning?.suggestedTap ?? 0;
    expect(codes({ "primary.tap": tuned })).not.toContain("primary-not-tuned");
    expect(codes({ "primary.tap": tuned - 1 })).toContain("primary-not-tuned");
  });

  it.each<[string, Changes, Changes]>([
    ["current-limit-above-rating", { "drive.overCurrentLimit": 599 }, { "drive.overCurrentLimit": 601 }],
    ["current-limit-above-bank-rating", { "tank.strings": 3 }, { "tank.strings": 1 }],
    ["current-limit-reached", { "drive.overCurrentLimit": 560 }, { "drive.overCurrentLimit": 400 }],
    [
      "current-driven-past-limit",
      { "drive.overCurrentLimit": 60 },
      { "drive.overCurrentLimit": 60, "drive.switch.pulseCurrentRating": 80 },
    ],
    [
      "current-driven-past-limit",
      { "spark.length": 0, "drive.overCurrentLimit": 560 },
      { "spark.length": 0 },
    ],
    ["on-time-past-beat-minimum", { "interrupter.onTime": 5e-5 }, { "interrupter.onTime": 9e-5 }],
    ["bus-near-switch-rating", { "drive.switch.voltageRating": 410 }, { "drive.switch.voltageRating": 400 }],
    [
      "dead-time-longer-than-lead",
      { "drive.commutation.deadTime": 3.5e-7 },
      { "drive.commutation.deadTime": 5e-7 },
    ],
    [
      "lead-longer-than-half-cycle",
      { "drive.commutation.leadTime": 3e-6 },
      { "drive.commutation.leadTime": 5e-6 },
    ],
    ["reservoir-sag-large", { "drive.reservoirCapacitance": 1e-3 }, { "drive.reservoirCapacitance": 1e-4 }],
    [
      "mains-circuit-near-rating",
      { "drive.supply.circuitCurrent": 10 },
      { "drive.supply.circuitCurrent": 7 },
    ],
    [
      "supply-does-not-carry-load",
      {},
      { "drive.supply.sourceResistance": 20, "interrupter.repetitionRate": 900 },
    ],
    [
      "bursts-closer-than-gap",
      { "interrupter.repetitionRate": 1380 },
      { "interrupter.repetitionRate": 1390 },
    ],
    ["on-time-over-longest", { "interrupter.onTime": 1.8e-4 }, { "interrupter.onTime": 1.9e-4 }],
    [
      "reservoir-discharges-slowly",
      { "drive.supply.dischargeResistance": 800 },
      { "drive.supply.dischargeResistance": 1000 },
    ],
    [
      "comparator-level-differs",
      { "drive.currentTransformer.comparatorVoltage": 3.3 },
      { "drive.currentTransformer.comparatorVoltage": 2.5 },
    ],
    [
      "gradient-along-winding-high",
      {},
      { "drive.supply.arrangement": "doubler", "drive.overCurrentLimit": 2000 },
    ],
    ["turn-off-after-zero", { "drive.commutation.delay": 6e-7 }, { "drive.commutation.delay": 8e-7 }],
    [
      "dead-time-covers-half-period",
      { "drive.commutation.mode": "fixed frequency", "drive.commutation.deadTime": 3.7e-6 },
      { "drive.commutation.mode": "fixed frequency", "drive.commutation.deadTime": 3.8e-6 },
    ],
    [
      "no-energy-to-aim-at",
      { tuningAim: { kind: "most energy" } },
      { tuningAim: { kind: "most energy" }, "spark.length": 0 },
    ],
    // the point ends 0.31 m from the axis, the toroid at 0.8 m; sparks of 0.7 m
    ["audience-within-spark", { "room.audienceDistance": 1.02 }, { "room.audienceDistance": 1 }],
    ["audience-near-spark", { "room.audienceDistance": 2.42 }, { "room.audienceDistance": 2.4 }],
    ["ceiling-near-spark", { "room.ceilingHeight": 1.86 }, { "room.ceilingHeight": 1.84 }],
    ["wall-near-spark", { "room.wallDistance": 1.37 }, { "room.wallDistance": 1.35 }],
    ["flashover-primary-to-secondary", {}, { "primary.innerRadius": 0.071 }],
  ])("judge %s on both sides of its limit", (code, below, beyond) => {
    expect(codes(below)).not.toContain(code);
    expect(codes(beyond)).toContain(code);
  });

  it("say one thing where the nearer limit would say it again", () => {
    const found = codes({
      "drive.switch.voltageRating": 300,
      "drive.supply.circuitCurrent": 2,
      "room.audienceDistance": 0.9,
    });
    expect(found).not.toContain("audience-near-spark");
    expect(found).not.toContain("bus-near-switch-rating");
    expect(found).not.toContain("mains-circuit-near-rating");
  });

  it("say of a pair that goes off late that, and not that its dead time is long", () => {
    expect(codes({ "drive.commutation.delay": 8e-7 })).not.toContain("dead-time-longer-than-lead");
  });

  it("judge no mains circuit where a bench supply stands before it", () => {
    const bench = { "drive.supply.arrangement": "bench", "drive.supply.circuitCurrent": 1 };
    expect(codes(bench).filter((code) => code.startsWith("mains-circuit"))).toEqual([]);
  });

  it("hint at no fuse above the circuit's own rating", () => {
    const hint = (repetitionRate: number) =>
      evaluate(changed({ "interrupter.repetitionRate": repetitionRate })).drive?.fuseHint;
    expect(hint(120)).toBe(10);
    expect(hint(1200)).toBeNull();
  });

  it("take a limit that ends half cycles for no beat", () => {
    const limited = { "drive.overCurrentAction": "end half cycle", "drive.overCurrentLimit": 250 };
    expect(codes(limited)).not.toContain("on-time-past-beat-minimum");
  });

  it("ask for no clearance in the open, or from a coil without a spark", () => {
    const open = { "room.ceilingHeight": null, "room.wallDistance": null, "room.audienceDistance": null };
    const near = { "room.ceilingHeight": 0.9, "room.wallDistance": 0.5, "spark.length": 0 };
    for (const changes of [open, near])
      expect(codes(changes).filter((code) => code.endsWith("-spark"))).toEqual([]);
  });

  it("say what to change, in the reader's units", () => {
    const finding = evaluate(
      changed({ "tank.unitsInSeries": 1, "tank.strings": 1, "primary.tap": 7 }),
    ).findings.find(({ code }) => code === "bank-peak-current-over-rating");
    expect(finding && findingMessage(finding, "metric")).toMatch(
      /^Peak current of a unit of .+ is above the rated 380\.0.A\. Connect more strings in parallel, or lower the current\.$/,
    );
  });
});
