/** The pier hall pair: a worked example with the project's own figures, which loads at the first start. */

import type { InputOf } from "../fields/declaration";
import { withDefaults } from "../fields/defaults";
import { designFields } from "../fields/designFields";
import { defaultArrangement } from "./arrangement";
import type { Design } from "./design";
import type { Show } from "./show";

type Parts = InputOf<typeof designFields>;

const INTERRUPTER: Parts["interrupter"] = {
  onTime: 120e-6,
  repetitionRate: 120,
  longestOnTime: 180e-6,
  shortestGap: 600e-6,
  dutyLimit: 0.05,
  dutyWindow: 0.25,
};

const SWITCH: Parts["drive"]["switch"] = {
  voltageRating: 650,
  pulseCurrentRating: 600,
  onStateVoltage: 1,
  onStateResistance: 0.0045,
  turnOffEnergyPerAmpere: 35e-6,
  turnOffTestVoltage: 400,
  gateCharge: 1.7e-6,
  gateVoltage: 18,
  thermal: [
    { resistance: 0.004, timeConstant: 0.0001 },
    { resistance: 0.012, timeConstant: 0.0012 },
    { resistance: 0.05, timeConstant: 0.018 },
    { resistance: 0.055, timeConstant: 0.19 },
  ],
  caseTemperature: 318.15,
  junctionLimit: 423.15,
};

const DRIVE: Parts["drive"] = {
  supply: {
    arrangement: "bridge rectifier",
    mainsVoltage: 230,
    mainsFrequency: 50,
  },
  reservoirCapacitance: 0.0033,
  bridge: "full",
  switch: SWITCH,
  commutation: { mode: "primary current", leadTime: 6.5e-7, delay: 2.5e-7, deadTime: 3e-7 },
  overCurrentLimit: 480,
  currentTransformer: {
    turns: [40, 25],
    burden: 6.8,
  },
};

const SURROUNDINGS: Pick<Parts, "air" | "room"> = {
  air: { temperature: 293.15, pressure: 101325 },
  room: {
    ceilingHeight: 4.2,
    wallDistance: 3.5,
    audienceDistance: 5,
  },
};

const SPARK: Parts["spark"] = {
  length: 0.7,
  capacitancePerLength: 5e-12,
  resistance: 220e3,
};

const LEFT: Parts = {
  ...SURROUNDINGS,
  secondary: {
    formerDiameter: 0.125,
    windingLength: 0.56,
    turns: 1480,
    wire: { material: "copper", conductorDiameter: 0.000335, overallDiameter: 0.000371 },
    baseHeight: 0.11,
    measuredQ: null,
    measuredResonance: null,
  },
  topLoad: {
    elements: [{ shape: "toroid", outerDiameter: 0.46, tubeDiameter: 0.11, centreHeight: 0.745 }],
    breakoutPoint: { length: 0.08, tipRadius: 0.001 },
    surfaceFactor: 1,
  },
  primary: {
    innerRadius: 0.105,
    turns: 8,
    tap: 6.14,
    pitch: 0.0145,
    inclinationDegrees: 0,
    tubeDiameter: 0.0095,
    wallThickness: 0.0008,
    baseHeight: 0.1,
    leadInductance: 6e-7,
    strikeRail: { radius: 0.245, tubeDiameter: 0.0095, height: 0.16 },
  },
  tank: {
    unit: { capacitance: 2e-7, dcVoltage: 2000, rmsCurrent: 17, peakCurrent: 380, dissipationFactor: 0.0007 },
    unitsInSeries: 6,
    strings: 3,
  },
  drive: DRIVE,
  interrupter: INTERRUPTER,
  spark: SPARK,
  tuningAim: { kind: "spark", length: 0.7 },
};

export const pierHallLeft: Design = {
  format: "coilwright-design",
  version: 1,
  title: "Pier hall, left coil",
  notes: "",
  ...withDefaults(designFields, LEFT),
};

/** Tuned to within 1 % of the left coil's resonance, with another former, gauge and toroid and a conical primary. */
export const pierHallRight: Design = {
  ...pierHallLeft,
  title: "Pier hall, right coil",
  notes: "",
  secondary: {
    ...pierHallLeft.secondary,
    formerDiameter: 0.16,
    windingLength: 0.46,
    turns: 1020,
    wire: { material: "copper", conductorDiameter: 0.0004, overallDiameter: 0.000439 },
    baseHeight: 0.13,
  },
  topLoad: {
    elements: [{ shape: "toroid", outerDiameter: 0.5, tubeDiameter: 0.125, centreHeight: 0.675 }],
    breakoutPoint: { length: 0.08, tipRadius: 0.001 },
    surfaceFactor: 1,
  },
  primary: {
    ...pierHallLeft.primary,
    innerRadius: 0.125,
    tap: 5.62,
    inclinationDegrees: 15,
    pitch: 0.015,
    strikeRail: { radius: 0.265, tubeDiameter: 0.0095, height: 0.2 },
  },
};

/** The show that loads at the first start. */
export function exampleShow(): Show {
  return {
    format: "coilwright-show",
    version: 1,
    name: "The pier hall pair",
    designs: { left: pierHallLeft, right: pierHallRight },
    order: ["left", "right"],
    open: "left",
    left: "left",
    right: "right",
    spacing: 3,
    phase: "in phase",
    lineUp: { candidates: [] },
    lanes: [],
    arrangement: defaultArrangement,
    score: null,
  };
}
