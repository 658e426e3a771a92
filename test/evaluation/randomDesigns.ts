/** Whole valid designs drawn from a seed: coils that people build, each with a bank near its resonance, and a drive. */
import { bankCapacitance } from "../../src/calc/circuit/bank";
import type { Commutation, Drive, Spark, StrikeRail, Supply, Tank } from "../../src/calc/design-parts";
import type { Design } from "../../src/design/design";
import { evaluateField } from "../../src/evaluation/evaluate";
import type { FieldEvaluation } from "../../src/evaluation/evaluation";
import { randomCoil, seeded } from "../calc/coil/randomCoils";

/** Hz of the secondary without a spark. */
export const RESONANCES = [60e3, 250e3] as const;
export const COUPLINGS = [0.05, 0.25] as const;
/** F of banks that are bought rather than dreamt of. */
const CAPACITANCES = [20e-9, 1e-6] as const;

interface Draw {
  between: (from: number, to: number) => number;
  oneOf: <Choice>(choices: readonly Choice[]) => Choice;
}

function drawFrom(random: () => number): Draw {
  return {
    between: (from, to) => from + (to - from) * random(),
    oneOf: (choices) => choices[Math.floor(random() * choices.length)],
  };
}

function railAround({ primary }: Design, { between }: Draw): StrikeRail {
  const reach = primary.turns * primary.pitch;
  return {
    radius: primary.innerRadius + reach + between(0.03, 0.06),
    tubeDiameter: primary.tubeDiameter,
    height: primary.baseHeight + reach + between(0.03, 0.06),
  };
}

function sparkLoad({ between, oneOf }: Draw): Spark {
  const topology = oneOf(["series", "parallel"] as const);
  return {
    length: between(0.2, 1.2),
    capacitancePerLength: between(3e-12, 7e-12),
    // across its capacitance a spark's resistance must be the larger one, or no resonance would be left
    resistance: topology === "series" ? between(1e5, 4e5) : between(6e5, 3e6),
    topology,
    growth: oneOf(["full from the start", "with the burst"] as const),
    growthRate: between(2000, 10e3),
  };
}

function commutation({ between, oneOf }: Draw, resonance: number): Commutation {
  const delay = between(1e-7, 4e-7);
  const fixed = oneOf([false, false, true]);
  return {
    mode: fixed ? "fixed frequency" : "primary current",
    leadTime: delay + between(0, 4e-7),
    delay,
    deadTime: between(2e-7, 5e-7),
    frequency: fixed ? resonance * between(0.9, 1.1) : null,
  };
}

function supply(usual: Supply, { oneOf }: Draw): Supply {
  return oneOf([
    { ...usual, arrangement: "bridge rectifier", mainsVoltage: 230 },
    { ...usual, arrangement: "doubler", mainsVoltage: 120 },
    { ...usual, arrangement: "three-phase bridge", mainsVoltage: 400 },
    { ...usual, arrangement: "bench", mainsVoltage: 60 },
  ]);
}

function driveOf(usual: Drive, draw: Draw, resonance: number): Drive {
  const { between, oneOf } = draw;
  return {
    ...usual,
    supply: supply(usual.supply, draw),
    reservoirCapacitance: between(1e-3, 1e-2),
    reservoirSeriesResistance: between(0.005, 0.05),
    bridge: oneOf(["half", "full"] as const),
    switch: {
      ...usual.switch,
      onStateVoltage: oneOf([0, between(0.8, 1.3)]),
      onStateResistance: between(0.002, 0.02),
      parallelDevices: oneOf([1, 1, 2]),
    },
    commutation: commutation(draw, resonance),
    overCurrentLimit: between(150, 1500),
    overCurrentAction: oneOf(["end burst", "end half cycle"] as const),
  };
}

/** A coil with a spark, a tap and a height of the primary that spread the coupling; its bank is not yet its own. */
function wound(random: () => number, draw: Draw): Design {
  const coil = randomCoil(random);
  const { between, oneOf } = draw;
  const baseHeight = Math.max(0.04, coil.secondary.baseHeight - between(-0.01, 0.12));
  const primary = { ...coil.primary, baseHeight, tap: coil.primary.turns * between(0.5, 0.95) };
  const strikeRail = oneOf([true, false, false]) ? railAround({ ...coil, primary }, draw) : null;
  const spark = sparkLoad(draw);
  return {
    ...coil,
    title: "Drawn at random",
    primary: { ...primary, leadInductance: between(2e-7, 8e-7), strikeRail },
    spark,
    tuningAim: { kind: "spark", length: spark.length },
  };
}

/** The bank that brings the primary near the loaded secondary; null where the two coils cannot be solved. */
function bankFor({ primary, tank }: Design, field: FieldEvaluation, { between, oneOf }: Draw): Tank | null {
  if (!field.primary || !field.secondary) return null;
  const omega = 2 * Math.PI * field.secondary.loadedResonance * between(0.93, 1.03);
  const capacitance = 1 / (omega * omega * (field.primary.inductance + primary.leadInductance));
  const [unitsInSeries, strings] = [oneOf([3, 4, 5, 6, 8]), oneOf([1, 2, 3, 4])];
  const dissipationFactor = between(3e-4, 1.5e-3);
  const unit = { ...tank.unit, capacitance: (capacitance * unitsInSeries) / strings, dissipationFactor };
  return { unit, unitsInSeries, strings, wantedCapacitance: null, unitCost: null };
}

function within(value: number, [low, high]: readonly [number, number]): boolean {
  return value >= low && value <= high;
}

function isUsual(design: Design): boolean {
  const { secondary, coupling } = evaluateField(design);
  return (
    secondary !== null &&
    coupling !== null &&
    within(secondary.resonance, RESONANCES) &&
    within(coupling.circuit, COUPLINGS) &&
    within(bankCapacitance(design.tank), CAPACITANCES)
  );
}

/** Null where what was drawn makes no coil of a usual kind. */
function randomDesign(random: () => number): Design | null {
  const draw = drawFrom(random);
  const coil = wound(random, draw);
  const field = evaluateField(coil);
  const tank = bankFor(coil, field, draw);
  if (!tank || !field.secondary) return null;
  const design: Design = {
    ...coil,
    tank,
    drive: driveOf(coil.drive, draw, field.secondary.resonance),
    interrupter: { ...coil.interrupter, onTime: draw.between(40e-6, 180e-6) },
  };
  return isUsual(design) ? design : null;
}

/** A number of valid designs, the same at every run: both sparks, both bridges, both commutations. */
export function randomDesigns(count: number, seed = 23): Design[] {
  const random = seeded(seed);
  const designs: Design[] = [];
  while (designs.length < count) {
    const design = randomDesign(random);
    if (design) designs.push(design);
  }
  return designs;
}
