/**
 * The schema of a design. It refuses wrong shape and what has no meaning; ranges, crossings and taps
 * past the end are valid documents with a finding. Meaning and default of a field come from its
 * declaration.
 */
import { z } from "zod";
import type { NumberField } from "./field";
import { choiceField, numberField, switchField } from "./fields";

// zod would try one `eval` at its first parse, which the page's security policy forbids
z.config({ jitless: true });

const WHOLE = "must be a whole number";

/**
 * Not `int`, which refuses what is whole and large as if it were broken; `multipleOf` alone, which the published
 * schema tells, takes the smallest numbers for multiples of 1.
 */
function whole(): z.ZodNumber {
  return z.number().multipleOf(1, { error: WHOLE, abort: true }).refine(Number.isInteger, WHOLE);
}

const MEANINGS: Record<NumberField["meaning"], z.ZodNumber> = {
  positive: z.number().positive("must be above zero"),
  "zero or more": z.number().nonnegative("must not be below zero"),
  any: z.number(),
  "positive whole": whole().positive("must be above zero"),
  "zero or more whole": whole().nonnegative("must not be below zero"),
};

function required(path: string) {
  return MEANINGS[numberField(path).meaning];
}

function orNull(path: string) {
  return required(path).nullable();
}

/** A number added within version 1: absent, it takes its declared default. */
function added(path: string) {
  return required(path).default(numberField(path).default ?? 0);
}

function addedOrNull(path: string) {
  return orNull(path).default(numberField(path).default);
}

function addedSwitch(path: string) {
  return z.boolean().default(switchField(path).default);
}

/** One of the declared words; the type is given where it is used. */
function word<Word extends string>(path: string) {
  return z.enum(choiceField(path).options as [Word, ...Word[]]);
}

function addedWord<Word extends string>(path: string) {
  return word<Word>(path).default(choiceField(path).default as never);
}

const air = z.strictObject({ temperature: required("air.temperature"), pressure: required("air.pressure") });

const room = z.strictObject({
  ceilingHeight: orNull("room.ceilingHeight"),
  wallDistance: orNull("room.wallDistance"),
  audienceDistance: orNull("room.audienceDistance"),
  ceilingConducts: addedSwitch("room.ceilingConducts"),
  wallConducts: addedSwitch("room.wallConducts"),
});

const secondary = z.strictObject({
  formerDiameter: required("secondary.formerDiameter"),
  windingLength: required("secondary.windingLength"),
  turns: required("secondary.turns"),
  wire: z.strictObject({
    material: word<"copper" | "aluminium">("secondary.wire.material"),
    conductorDiameter: required("secondary.wire.conductorDiameter"),
    overallDiameter: required("secondary.wire.overallDiameter"),
  }),
  baseHeight: required("secondary.baseHeight"),
  formerWall: added("secondary.formerWall"),
  formerPermittivity: added("secondary.formerPermittivity"),
  windingTemperature: added("secondary.windingTemperature"),
  measuredQ: orNull("secondary.measuredQ"),
  measuredResonance: orNull("secondary.measuredResonance"),
});

const toroid = z.strictObject({
  shape: z.literal("toroid"),
  outerDiameter: required("topLoad.elements.*.outerDiameter"),
  tubeDiameter: required("topLoad.elements.*.tubeDiameter"),
  centreHeight: required("topLoad.elements.*.centreHeight"),
});

const sphere = z.strictObject({
  shape: z.literal("sphere"),
  diameter: required("topLoad.elements.*.diameter"),
  centreHeight: required("topLoad.elements.*.centreHeight"),
});

const MOST_ELEMENTS = 8;

export const topLoadSchema = z.strictObject({
  elements: z.array(z.discriminatedUnion("shape", [toroid, sphere])).max(MOST_ELEMENTS),
  breakoutPoint: z
    .strictObject({
      length: required("topLoad.breakoutPoint.length"),
      tipRadius: required("topLoad.breakoutPoint.tipRadius"),
    })
    .nullable(),
  surfaceFactor: added("topLoad.surfaceFactor"),
});

const primary = z.strictObject({
  innerRadius: required("primary.innerRadius"),
  turns: required("primary.turns"),
  tap: required("primary.tap"),
  pitch: required("primary.pitch"),
  inclinationDegrees: required("primary.inclinationDegrees"),
  tubeDiameter: required("primary.tubeDiameter"),
  wallThickness: required("primary.wallThickness"),
  baseHeight: required("primary.baseHeight"),
  leadInductance: required("primary.leadInductance"),
  strikeRail: z
    .strictObject({
      radius: required("primary.strikeRail.radius"),
      tubeDiameter: required("primary.strikeRail.tubeDiameter"),
      height: required("primary.strikeRail.height"),
    })
    .nullable(),
});

const tank = z.strictObject({
  unit: z.strictObject({
    capacitance: required("tank.unit.capacitance"),
    dcVoltage: required("tank.unit.dcVoltage"),
    rmsCurrent: required("tank.unit.rmsCurrent"),
    peakCurrent: required("tank.unit.peakCurrent"),
    dissipationFactor: required("tank.unit.dissipationFactor"),
  }),
  unitsInSeries: required("tank.unitsInSeries"),
  strings: required("tank.strings"),
  wantedCapacitance: addedOrNull("tank.wantedCapacitance"),
  unitCost: addedOrNull("tank.unitCost"),
});

const supply = z.strictObject({
  arrangement: word<"bridge rectifier" | "doubler" | "three-phase bridge" | "bench">(
    "drive.supply.arrangement",
  ),
  mainsVoltage: required("drive.supply.mainsVoltage"),
  mainsFrequency: required("drive.supply.mainsFrequency"),
  sourceResistance: added("drive.supply.sourceResistance"),
  sourceInductance: added("drive.supply.sourceInductance"),
  circuitCurrent: added("drive.supply.circuitCurrent"),
  prechargeResistance: added("drive.supply.prechargeResistance"),
  dischargeResistance: added("drive.supply.dischargeResistance"),
});

const MOST_FOSTER_ELEMENTS = 12;

const device = z.strictObject({
  voltageRating: required("drive.switch.voltageRating"),
  pulseCurrentRating: required("drive.switch.pulseCurrentRating"),
  onStateVoltage: required("drive.switch.onStateVoltage"),
  onStateResistance: required("drive.switch.onStateResistance"),
  turnOffEnergyPerAmpere: required("drive.switch.turnOffEnergyPerAmpere"),
  turnOffTestVoltage: required("drive.switch.turnOffTestVoltage"),
  gateCharge: required("drive.switch.gateCharge"),
  gateVoltage: required("drive.switch.gateVoltage"),
  gateResistance: added("drive.switch.gateResistance"),
  parallelDevices: added("drive.switch.parallelDevices"),
  thermal: z
    .array(
      z.strictObject({
        resistance: required("drive.switch.thermal.*.resistance"),
        timeConstant: required("drive.switch.thermal.*.timeConstant"),
      }),
    )
    .min(1)
    .max(MOST_FOSTER_ELEMENTS),
  caseTemperature: required("drive.switch.caseTemperature"),
  junctionLimit: required("drive.switch.junctionLimit"),
});

const drive = z.strictObject({
  supply,
  reservoirCapacitance: required("drive.reservoirCapacitance"),
  reservoirSeriesResistance: added("drive.reservoirSeriesResistance"),
  bridge: word<"half" | "full">("drive.bridge"),
  switch: device,
  commutation: z.strictObject({
    mode: word<"primary current" | "fixed frequency">("drive.commutation.mode"),
    leadTime: required("drive.commutation.leadTime"),
    delay: required("drive.commutation.delay"),
    deadTime: required("drive.commutation.deadTime"),
    frequency: addedOrNull("drive.commutation.frequency"),
  }),
  overCurrentLimit: required("drive.overCurrentLimit"),
  overCurrentAction: addedWord<"end burst" | "end half cycle">("drive.overCurrentAction"),
  currentTransformer: z.strictObject({
    turns: z.array(required("drive.currentTransformer.turns.*")).min(1).max(2),
    burden: required("drive.currentTransformer.burden"),
    coreArea: added("drive.currentTransformer.coreArea"),
    saturationFluxDensity: added("drive.currentTransformer.saturationFluxDensity"),
    comparatorVoltage: addedOrNull("drive.currentTransformer.comparatorVoltage"),
  }),
});

const interrupter = z.strictObject({
  onTime: required("interrupter.onTime"),
  repetitionRate: required("interrupter.repetitionRate"),
  longestOnTime: required("interrupter.longestOnTime"),
  shortestGap: required("interrupter.shortestGap"),
  dutyLimit: required("interrupter.dutyLimit"),
  dutyWindow: required("interrupter.dutyWindow"),
});

const spark = z.strictObject({
  length: required("spark.length"),
  capacitancePerLength: required("spark.capacitancePerLength"),
  resistance: required("spark.resistance"),
  topology: addedWord<"series" | "parallel">("spark.topology"),
  growth: addedWord<"full from the start" | "with the burst">("spark.growth"),
  growthRate: added("spark.growthRate"),
});

const tuningAim = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("unloaded") }),
  z.strictObject({ kind: z.literal("spark"), length: required("tuningAim.length") }),
  z.strictObject({ kind: z.literal("most energy") }),
]);

const corrections = z
  .strictObject({
    former: addedSwitch("corrections.former"),
    floorConducts: addedSwitch("corrections.floorConducts"),
    wireCurrent: addedSwitch("corrections.wireCurrent"),
    lossAllowance: added("corrections.lossAllowance"),
  })
  .prefault({});

export const DESIGN_FORMAT = "coilwright-design";
export const DESIGN_VERSION = 1;

const LONGEST_TITLE = 200;
const LONGEST_NOTES = 20_000;

export const designSchema = z.strictObject({
  format: z.literal(DESIGN_FORMAT),
  version: z.literal(DESIGN_VERSION),
  title: z.string().max(LONGEST_TITLE),
  notes: z.string().max(LONGEST_NOTES),
  air,
  room,
  secondary,
  topLoad: topLoadSchema,
  primary,
  tank,
  drive,
  interrupter,
  spark,
  tuningAim,
  corrections,
});
