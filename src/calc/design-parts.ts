/**
 * The parts of a design, as plain data in SI units (`inclinationDegrees` alone is in degrees).
 *
 * The calculation library needs nothing above it, so it declares what it reads here; the schema
 * in `design` is checked against these interfaces. Heights are above the ground plane z = 0.
 */

export interface Air {
  /** K */
  temperature: number;
  /** Pa */
  pressure: number;
}

/** What stands around the coil. A distance that is `null` is absent. */
export interface Room {
  /** m, ceiling above the ground plane */
  ceilingHeight: number | null;
  /** m, axis to the nearest wall */
  wallDistance: number | null;
  /** m, axis to the nearest person */
  audienceDistance: number | null;
  /** whether ceiling and wall enter the electric field as grounded surfaces; clearance is judged either way */
  ceilingConducts: boolean;
  wallConducts: boolean;
}

export interface Wire {
  material: "copper" | "aluminium";
  /** m, bare */
  conductorDiameter: number;
  /** m, over enamel */
  overallDiameter: number;
}

export interface Secondary {
  /** m, outside of the former */
  formerDiameter: number;
  /** m, turns × pitch */
  windingLength: number;
  turns: number;
  wire: Wire;
  /** m, lower end of the winding */
  baseHeight: number;
  /** m */
  formerWall: number;
  /** relative */
  formerPermittivity: number;
  /** K */
  windingTemperature: number;
  measuredQ: number | null;
  /** Hz, with top load, no spark */
  measuredResonance: number | null;
}

export interface Toroid {
  shape: "toroid";
  /** m, overall */
  outerDiameter: number;
  /** m */
  tubeDiameter: number;
  /** m */
  centreHeight: number;
}

export interface Sphere {
  shape: "sphere";
  /** m */
  diameter: number;
  /** m */
  centreHeight: number;
}

export type TopLoadElement = Toroid | Sphere;

export interface BreakoutPoint {
  /** m, how far it stands out of the top load's surface */
  length: number;
  /** m */
  tipRadius: number;
}

export interface TopLoad {
  /** all at the potential of the winding's top; empty for a bare winding */
  elements: TopLoadElement[];
  breakoutPoint: BreakoutPoint | null;
  /** factor on the critical gradient for the surface's state, 1 = smooth and clean */
  surfaceFactor: number;
}

export interface StrikeRail {
  /** m, ring's centre line */
  radius: number;
  /** m */
  tubeDiameter: number;
  /** m */
  height: number;
}

export interface Primary {
  /** m, conductor's centre at the start */
  innerRadius: number;
  /** all turns that are wound */
  turns: number;
  /** turns from the start to the tap */
  tap: number;
  /** m, centre to centre, along the slope */
  pitch: number;
  /** 0 flat, 90 helical */
  inclinationDegrees: number;
  /** m, outside */
  tubeDiameter: number;
  /** m */
  wallThickness: number;
  /** m, conductor's centre at the start */
  baseHeight: number;
  /** H, leads and tank loop */
  leadInductance: number;
  strikeRail: StrikeRail | null;
}

export interface CapacitorUnit {
  /** F */
  capacitance: number;
  /** V */
  dcVoltage: number;
  /** A */
  rmsCurrent: number;
  /** A */
  peakCurrent: number;
  dissipationFactor: number;
}

export interface Tank {
  unit: CapacitorUnit;
  unitsInSeries: number;
  strings: number;
  /** F, what arrangements are proposed for; null for the present bank's */
  wantedCapacitance: number | null;
  /** of one unit, in whatever money */
  unitCost: number | null;
}

export interface Supply {
  arrangement: "bridge rectifier" | "doubler" | "three-phase bridge" | "bench";
  /** V RMS, line to line for three phases; for `bench` the direct voltage itself */
  mainsVoltage: number;
  /** Hz */
  mainsFrequency: number;
  /** Ω */
  sourceResistance: number;
  /** H */
  sourceInductance: number;
  /** A, rating of the mains circuit */
  circuitCurrent: number;
  /** Ω */
  prechargeResistance: number;
  /** Ω */
  dischargeResistance: number;
}

export interface FosterElement {
  /** K/W */
  resistance: number;
  /** s */
  timeConstant: number;
}

export interface Switch {
  /** V */
  voltageRating: number;
  /** A */
  pulseCurrentRating: number;
  /** V */
  onStateVoltage: number;
  /** Ω */
  onStateResistance: number;
  /** J/A at the test voltage */
  turnOffEnergyPerAmpere: number;
  /** V */
  turnOffTestVoltage: number;
  /** C */
  gateCharge: number;
  /** V, total swing */
  gateVoltage: number;
  /** Ω */
  gateResistance: number;
  /** devices in parallel per switch */
  parallelDevices: number;
  /** Foster network, junction to case, of one device */
  thermal: FosterElement[];
  /** K */
  caseTemperature: number;
  /** K */
  junctionLimit: number;
}

export interface Commutation {
  mode: "primary current" | "fixed frequency";
  /** s */
  leadTime: number;
  /** s */
  delay: number;
  /** s */
  deadTime: number;
  /** Hz, for `fixed frequency` */
  frequency: number | null;
}

export interface CurrentTransformer {
  /** one transformer, or two in cascade */
  turns: number[];
  /** Ω */
  burden: number;
  /** m² of one core */
  coreArea: number;
  /** T */
  saturationFluxDensity: number;
  /** V at which the comparator trips; null where it is set to what the limit needs */
  comparatorVoltage: number | null;
}

export interface Drive {
  supply: Supply;
  /** F, across the whole bus */
  reservoirCapacitance: number;
  /** Ω */
  reservoirSeriesResistance: number;
  bridge: "half" | "full";
  switch: Switch;
  commutation: Commutation;
  /** A */
  overCurrentLimit: number;
  overCurrentAction: "end burst" | "end half cycle";
  currentTransformer: CurrentTransformer;
}

export interface Interrupter {
  /** s */
  onTime: number;
  /** Hz */
  repetitionRate: number;
  /** s */
  longestOnTime: number;
  /** s, end of a pulse to the next start */
  shortestGap: number;
  dutyLimit: number;
  /** s */
  dutyWindow: number;
}

export interface Spark {
  /** m, the one simulated */
  length: number;
  /** F/m */
  capacitancePerLength: number;
  /** Ω */
  resistance: number;
  topology: "series" | "parallel";
  /** how the load grows within a burst (common practice, no source) */
  growth: "full from the start" | "with the burst";
  /** m/s, growth rate once broken out */
  growthRate: number;
}

export type TuningAim =
  | { kind: "unloaded" }
  | {
      kind: "spark";
      /** m */
      length: number;
    }
  | { kind: "most energy" };

/** The corrections of the model that a design may switch. */
export interface Corrections {
  /** the former's permittivity lowers the resonance slightly */
  former: boolean;
  /** the floor carries no magnetic flux (perfect conductor) */
  floorConducts: boolean;
  /** the wire's current moves to its skin at the resonance */
  wireCurrent: boolean;
  /** part of each computed loss added for what is not modelled, 0 by default */
  lossAllowance: number;
}

export interface DesignParts {
  air: Air;
  room: Room;
  secondary: Secondary;
  topLoad: TopLoad;
  primary: Primary;
  tank: Tank;
  drive: Drive;
  interrupter: Interrupter;
  spark: Spark;
  tuningAim: TuningAim;
  corrections: Corrections;
}
