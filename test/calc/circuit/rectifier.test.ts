import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chargingPath,
  noLoadBusVoltage,
  type Rectifier,
  rectifierUnderLoad,
} from "../../../src/calc/circuit/rectifier";
import type { Supply } from "../../../src/calc/design-parts";
import { runs } from "../../properties";
import { publishedValue } from "../../reference/checks/publishedValue";
import { simulate } from "./simulator";

const mains: Supply = {
  arrangement: "bridge rectifier",
  mainsVoltage: 230,
  mainsFrequency: 50,
  sourceResistance: 0.5,
  sourceInductance: 2e-4,
  circuitCurrent: 16,
  prechargeResistance: 47,
  dischargeResistance: 22e3,
};

const DIODE = ".model ideal D(is=1e-9 n=0.02 rs=1e-4)";

/** Source, rectifier and reservoir under a load of constant power, for ngspice. */
function netlist({ supply, reservoirCapacitance, power }: Rectifier): string {
  const { arrangement, mainsVoltage, mainsFrequency, sourceResistance, sourceInductance } = supply;
  const amplitude = Math.SQRT2 * mainsVoltage;
  const cycles = arrangement === "three-phase bridge" ? 6 : 24;
  const noLoad = noLoadBusVoltage(supply);
  const lines = {
    "bridge rectifier": [
      `Vline sa sb SIN(0 ${amplitude} ${mainsFrequency})`,
      `Rline sa sc ${sourceResistance}`,
      `Lline sc a ${sourceInductance}`,
      "D1 a up ideal",
      "D2 sb up ideal",
      "D3 0 a ideal",
      "D4 0 sb ideal",
      `Cbus up 0 ${reservoirCapacitance} ic=${noLoad}`,
    ],
    doubler: [
      `Vline sa mid SIN(0 ${amplitude} ${mainsFrequency})`,
      `Rline sa sc ${sourceResistance}`,
      `Lline sc a ${sourceInductance}`,
      "D1 a up ideal",
      "D3 0 a ideal",
      `Cup up mid ${2 * reservoirCapacitance} ic=${noLoad / 2}`,
      `Cdown mid 0 ${2 * reservoirCapacitance} ic=${noLoad / 2}`,
    ],
    "three-phase bridge": [0, 120, 240].flatMap((phase, index) => [
      `Vline${index || ""} s${index} star SIN(0 ${amplitude / Math.sqrt(3)} ${mainsFrequency} 0 0 ${phase})`,
      `Rline${index} s${index} m${index} ${sourceResistance}`,
      `Lline${index} m${index} a${index} ${sourceInductance}`,
      `Dup${index} a${index} up ideal`,
      `Ddown${index} 0 a${index} ideal`,
      `Rsnub${index} a${index} n${index} 10`,
      `Csnub${index} n${index} star 1e-7`,
    ]),
    bench: [],
  }[arrangement];
  // a snubber where the diodes block, or the simulator's steps shrink without end
  const snubbed = [
    "Rgrid up 0 1e6",
    "Rsnub a snub 10",
    `Csnub snub ${arrangement === "doubler" ? "mid" : "sb"} 1e-7`,
  ];
  const bus =
    arrangement === "three-phase bridge"
      ? [`Cbus up 0 ${reservoirCapacitance} ic=${noLoad}`, "Rstar star 0 1e6"]
      : snubbed;
  return [
    "* rectifier",
    ...lines,
    ...bus,
    `Bload up 0 I=${power}/max(V(up),${0.1 * noLoad})`,
    DIODE,
    `.tran 5e-5 ${cycles / mainsFrequency} ${(cycles - 2) / mainsFrequency} 2e-5 uic`,
    ".options reltol=1e-3",
    ".end",
    "",
  ].join("\n");
}

/** Mean of a column over time, by trapezia. */
function mean(time: readonly number[], values: readonly number[]): number {
  let sum = 0;
  for (let at = 1; at < time.length; at++)
    sum += 0.5 * (values[at] + values[at - 1]) * (time[at] - time[at - 1]);
  return sum / (time[time.length - 1] - time[0]);
}

describe("the bus at no load", () => {
  // published.json P-rectifier: √2 and 2√2 times the mains' RMS voltage
  it("is the crest of the mains, twice that for a doubler", () => {
    for (const [volts, figures] of Object.entries(publishedValue("P-rectifier"))) {
      const [bridge, doubler] = figures as number[];
      const supply = { ...mains, mainsVoltage: Number.parseFloat(volts) };
      expect(noLoadBusVoltage(supply) / bridge).toBeCloseTo(1, 3);
      expect(noLoadBusVoltage({ ...supply, arrangement: "doubler" }) / doubler).toBeCloseTo(1, 3);
    }
  });

  it("is the bench supply's own voltage", () => {
    expect(noLoadBusVoltage({ ...mains, arrangement: "bench", mainsVoltage: 80 })).toBe(80);
  });
});

describe("the loop that charges an empty reservoir", () => {
  const path = (arrangement: Supply["arrangement"]) => chargingPath({ ...mains, arrangement }, 1e-3);
  const crest = Math.SQRT2 * 230;

  it("holds the mains' crest, whatever the bus comes to", () => {
    for (const arrangement of ["bridge rectifier", "doubler", "three-phase bridge"] as const)
      expect(path(arrangement).voltage).toBeCloseTo(crest, 9);
  });

  it("is a half of a doubler's reservoir at a time, and two lines of three phases", () => {
    expect(path("doubler")).toMatchObject({ capacitance: 2e-3, resistance: 0.5, turns: 2 });
    expect(path("three-phase bridge")).toMatchObject({ capacitance: 1e-3, resistance: 1, inductance: 4e-4 });
  });
});

describe("the current into the reservoir", () => {
  const under = (arrangement: Supply["arrangement"]) =>
    rectifierUnderLoad({ supply: { ...mains, arrangement }, reservoirCapacitance: 4e-3, power: 900 });

  it.each(["bridge rectifier", "doubler", "three-phase bridge"] as const)(
    "is on the mean what the load takes out again, from a %s",
    (arrangement) => {
      const { meanCurrent, meanVoltage } = under(arrangement);
      expect((meanCurrent * meanVoltage) / 900).toBeCloseTo(1, 2);
    },
  );

  it("is the line's own in a bridge, and in each half of a doubler that of every other pulse", () => {
    const [bridge, doubler] = [under("bridge rectifier"), under("doubler")];
    expect(bridge.rmsCurrent / bridge.mainsCurrent).toBeCloseTo(1, 9);
    expect(doubler.rmsCurrent / doubler.mainsCurrent).toBeCloseTo(Math.SQRT1_2, 9);
  });
});

describe("a rectifier under load, against ngspice", () => {
  it.each<[string, Partial<Supply>, number, number]>([
    ["bridge", {}, 3.3e-3, 1500],
    ["bridge, light load", {}, 1e-3, 150],
    ["bridge without inductance", { sourceInductance: 1e-7 }, 2e-3, 800],
    ["doubler", { arrangement: "doubler", mainsVoltage: 120, mainsFrequency: 60 }, 2e-3, 900],
    ["three phases", { arrangement: "three-phase bridge", mainsVoltage: 400 }, 1e-3, 3000],
  ])("%s", async (_, part, reservoirCapacitance, power) => {
    const rectifier = { supply: { ...mains, ...part }, reservoirCapacitance, power };
    const ours = rectifierUnderLoad(rectifier);
    const column = await simulate(netlist(rectifier));
    const [time, bus, line] = [column("time"), column("v(up)"), column("i(vline)")];
    expect(ours.meanVoltage / mean(time, bus)).toBeCloseTo(1, 2);
    expect(ours.lowestVoltage / Math.min(...bus)).toBeCloseTo(1, 2);
    const rms = Math.sqrt(
      mean(
        time,
        line.map((current) => current * current),
      ),
    );
    expect(Math.abs(ours.mainsCurrent / rms - 1)).toBeLessThan(0.03); // diodes' drop and overlap are not in ours
    const peak = Math.max(...line.map(Math.abs));
    expect(Math.abs(ours.peakCurrent / peak - 1)).toBeLessThan(0.05);
  });
});

describe("a rectifier under any load", () => {
  const rectifier = fc.record({
    power: fc.double({ min: 1, max: 2500, noNaN: true }),
    reservoirCapacitance: fc.double({ min: 2e-4, max: 1e-2, noNaN: true }),
    supply: fc
      .constantFrom("bridge rectifier" as const, "doubler" as const, "three-phase bridge" as const)
      .map((arrangement) => ({ ...mains, arrangement })),
  });

  it("takes from the mains what it gives and what its resistance burns", () => {
    fc.assert(
      fc.property(rectifier, (one) => {
        const { mainsPower, carriesLoad, powerFactor } = rectifierUnderLoad(one);
        if (!carriesLoad) return;
        expect(mainsPower).toBeGreaterThan(0.98 * one.power);
        expect(powerFactor).toBeLessThanOrEqual(1);
      }),
      runs(40, 20_240_517),
    );
  });

  it.each([
    ["bridge rectifier", 1],
    ["doubler", 1],
    ["three-phase bridge", 3],
  ] as const)(
    "at rest takes from the mains the load and the lines' heat, to half a per cent: %s",
    (arrangement, lines) => {
      // light loads on large reservoirs and inductive sources settle last
      for (const [sourceInductance, reservoirCapacitance, power] of [
        [0, 1e-2, 10],
        [2e-4, 3e-3, 500],
        [1e-2, 1e-2, 5],
      ]) {
        const source = { mainsVoltage: 120, mainsFrequency: 60, sourceResistance: 1, sourceInductance };
        const supply = { ...mains, arrangement, ...source };
        const { mainsPower, mainsCurrent } = rectifierUnderLoad({ supply, reservoirCapacitance, power });
        expect(Math.abs(mainsPower / (power + lines * mainsCurrent ** 2) - 1)).toBeLessThan(5e-3);
      }
    },
  );

  it("stays finite with no load, and with more than the mains can give", () => {
    for (const power of [0, 1e6])
      for (const value of Object.values(
        rectifierUnderLoad({ supply: mains, reservoirCapacitance: 1e-3, power }),
      ))
        expect(Number.isFinite(Number(value))).toBe(true);
  });

  it("says where the load is too much", () => {
    expect(rectifierUnderLoad({ supply: mains, reservoirCapacitance: 1e-3, power: 1e6 }).carriesLoad).toBe(
      false,
    );
    const bench = { ...mains, arrangement: "bench" as const, mainsVoltage: 60 };
    expect(rectifierUnderLoad({ supply: bench, reservoirCapacitance: 1e-3, power: 1e5 }).carriesLoad).toBe(
      false,
    );
  });

  it("never takes the bus below nothing, nor far above its no-load voltage, whatever the load", () => {
    // a small reservoir behind a choke swung to thousands of volts, and a hundred below zero
    for (const [reservoirCapacitance, power, sourceInductance] of [
      [5e-5, 932, 0.011],
      [1e-6, 110, 6e-4],
      [3e-4, 5500, 0.025],
      [1, 1e-6, 0.05],
    ]) {
      const supply = { ...mains, mainsVoltage: 42, sourceInductance };
      const { lowestVoltage, meanVoltage } = rectifierUnderLoad({ supply, reservoirCapacitance, power });
      expect(lowestVoltage).toBeGreaterThanOrEqual(0);
      expect(meanVoltage).toBeLessThan(10 * noLoadBusVoltage(supply));
    }
  });
});
