/** The variables, besides the tap, over which the tuning can be swept. */
import { bankCapacitance } from "../../calc/circuit/bank";
import type { Design } from "../../design/design";
import type { Dimension } from "../../units/dimension";

export type SweepName = "bank" | "toroid" | "spark";

interface SweepVariable {
  label: string;
  dimension: Dimension;
  /** the present value, SI; null if the design has none */
  present: (design: Design) => number | null;
  /** the values to evaluate, rising; empty if the design has none */
  values: (design: Design) => number[];
  change: (design: Design, value: number) => Design;
}

const POINTS = 21;

function between(from: number, to: number): number[] {
  return Array.from({ length: POINTS }, (_, index) => from + ((to - from) * index) / (POINTS - 1));
}

function bankOf({ tank }: Design): number {
  return bankCapacitance(tank);
}

/** Index of the widest toroid, −1 without one. */
function widestToroid({ topLoad }: Design): number {
  const widths = topLoad.elements.map((each) => (each.shape === "toroid" ? each.outerDiameter : 0));
  return widths.some((width) => width > 0) ? widths.indexOf(Math.max(...widths)) : -1;
}

function toroidOf(design: Design) {
  const element = design.topLoad.elements[widestToroid(design)];
  return element?.shape === "toroid" ? element : null;
}

function withToroid(design: Design, outerDiameter: number): Design {
  const widest = widestToroid(design);
  const elements = design.topLoad.elements.map((each, index) =>
    index === widest && each.shape === "toroid" ? { ...each, outerDiameter } : each,
  );
  return { ...design, topLoad: { ...design.topLoad, elements } };
}

/** From just above the smallest toroid with a hole to well beyond the present size. */
function toroidValues(design: Design): number[] {
  const toroid = toroidOf(design);
  if (!toroid) return [];
  const { outerDiameter, tubeDiameter } = toroid;
  return between(
    Math.max(0.6 * outerDiameter, Math.min(2.1 * tubeDiameter, outerDiameter)),
    1.6 * outerDiameter,
  );
}

export const SWEEPS: Record<SweepName, SweepVariable> = {
  bank: {
    label: "bank capacitance",
    dimension: "capacitance",
    present: bankOf,
    values: (design) => between(0.6 * bankOf(design), 1.6 * bankOf(design)),
    change: (design, value) => ({
      ...design,
      tank: {
        ...design.tank,
        unit: { ...design.tank.unit, capacitance: (design.tank.unit.capacitance * value) / bankOf(design) },
      },
    }),
  },
  toroid: {
    label: "outer diameter of the widest toroid",
    dimension: "length",
    present: (design) => toroidOf(design)?.outerDiameter ?? null,
    values: toroidValues,
    change: withToroid,
  },
  spark: {
    label: "spark length",
    dimension: "length",
    present: ({ spark }) => spark.length,
    values: ({ spark }) => between(0, spark.length > 0 ? 2 * spark.length : 1),
    change: (design, length) => ({ ...design, spark: { ...design.spark, length } }),
  },
};
