/**
 * The units that each kind of quantity may be shown and typed in. A unit's value is
 * `factor × number + offset` in SI.
 */
import type { Dimension } from "./dimension";
import type { UnitSystem } from "./unitSystem";

export interface Unit {
  /** as shown */
  symbol: string;
  /** other accepted spellings */
  spellings?: readonly string[];
  factor: number;
  offset?: number;
}

interface Quantity {
  /** symbol of the SI unit that typed prefixes apply to; empty for plain numbers */
  base: string;
  /** units to show in, rising; the largest that gives a number of at least 1 is used */
  shown: Record<UnitSystem, readonly Unit[]>;
  /** further units that may be typed */
  typed?: readonly Unit[];
  /** SI prefixes that may be typed before the base unit, µ among them as `µ` alone */
  prefixes: string;
}

const INCH = 0.0254;
const POUND = 0.45359237;
const FAHRENHEIT = 5 / 9;

const MILLIMETRE: Unit = { symbol: "mm", factor: 1e-3 };
const METRE: Unit = { symbol: "m", factor: 1 };
const INCHES: Unit = { symbol: "in", spellings: ["″", '"', "inch", "inches"], factor: INCH };
const FEET: Unit = { symbol: "ft", spellings: ["′", "'", "foot", "feet"], factor: 12 * INCH };
const LENGTHS: readonly Unit[] = [
  { symbol: "cm", factor: 1e-2 },
  { symbol: "mil", spellings: ["thou"], factor: INCH / 1000 },
  INCHES,
  FEET,
];

const LENGTH_PREFIXES = "nµmk";

function same(units: readonly Unit[]): Record<UnitSystem, readonly Unit[]> {
  return { metric: units, inch: units };
}

export const PREFIXES: readonly (readonly [prefix: string, factor: number])[] = [
  ["p", 1e-12],
  ["n", 1e-9],
  ["µ", 1e-6],
  ["m", 1e-3],
  ["", 1],
  ["k", 1e3],
  ["M", 1e6],
  ["G", 1e9],
];

/**
 * A quantity shown with engineering prefixes from one to another. One prefix further may be typed, except
 * past the unit without a prefix: a millihertz is a typing error for a megahertz.
 */
function engineering(base: string, from: string, to: string): Quantity {
  const first = PREFIXES.findIndex(([prefix]) => prefix === from);
  const last = PREFIXES.findIndex(([prefix]) => prefix === to);
  const units = PREFIXES.slice(first, last + 1).map(([prefix, factor]) => ({
    symbol: prefix + base,
    factor,
  }));
  const typed = PREFIXES.slice(Math.max(0, first - (from ? 1 : 0)), last + (to ? 2 : 1));
  return { base, shown: same(units), prefixes: typed.map(([prefix]) => prefix).join("") };
}

function fixed(symbol: string, factor = 1, typed: readonly Unit[] = []): Quantity {
  return { base: symbol, shown: same([{ symbol, factor }]), typed, prefixes: "" };
}

const KELVIN: Unit = { symbol: "K", factor: 1 };
const CELSIUS: Unit = { symbol: "°C", spellings: ["C", "ºC"], factor: 1, offset: 273.15 };
const DEGREES_FAHRENHEIT: Unit = {
  symbol: "°F",
  spellings: ["F", "ºF"],
  factor: FAHRENHEIT,
  offset: 459.67 * FAHRENHEIT,
};

export const QUANTITIES: Record<Dimension, Quantity> = {
  ratio: {
    base: "",
    shown: same([{ symbol: "", factor: 1 }]),
    typed: [{ symbol: "%", factor: 0.01 }],
    prefixes: "",
  },
  percent: { base: "", shown: same([{ symbol: "%", factor: 0.01 }]), prefixes: "" },
  count: { base: "", shown: same([{ symbol: "", factor: 1 }]), prefixes: "" },
  turns: { base: "", shown: same([{ symbol: "turns", spellings: ["turn"], factor: 1 }]), prefixes: "" },
  length: {
    base: "m",
    shown: { metric: [MILLIMETRE, { ...METRE, factor: 1 }], inch: [INCHES, FEET] },
    typed: LENGTHS,
    prefixes: LENGTH_PREFIXES,
  },
  smallLength: {
    base: "m",
    shown: { metric: [MILLIMETRE], inch: [INCHES] },
    typed: LENGTHS,
    prefixes: LENGTH_PREFIXES,
  },
  wireDiameter: {
    base: "m",
    shown: { metric: [MILLIMETRE], inch: [INCHES] },
    typed: LENGTHS,
    prefixes: LENGTH_PREFIXES,
  },
  area: {
    base: "m²",
    shown: {
      metric: [
        { symbol: "cm²", factor: 1e-4 },
        { symbol: "m²", factor: 1 },
      ],
      inch: [{ symbol: "in²", factor: INCH ** 2 }],
    },
    typed: [{ symbol: "mm²", factor: 1e-6 }],
    prefixes: "",
  },
  mass: {
    base: "kg",
    shown: {
      metric: [
        { symbol: "g", factor: 1e-3 },
        { symbol: "kg", factor: 1 },
      ],
      inch: [{ symbol: "lb", factor: POUND }],
    },
    typed: [{ symbol: "lb", factor: POUND }],
    prefixes: "",
  },
  angle: fixed("°", Math.PI / 180),
  degrees: fixed("°", 1),
  time: engineering("s", "n", ""),
  frequency: engineering("Hz", "", "M"),
  temperature: {
    base: "K",
    shown: { metric: [CELSIUS], inch: [DEGREES_FAHRENHEIT] },
    typed: [CELSIUS, DEGREES_FAHRENHEIT, KELVIN],
    prefixes: "",
  },
  temperatureRise: {
    base: "K",
    shown: { metric: [KELVIN], inch: [{ symbol: "°F", factor: FAHRENHEIT }] },
    typed: [KELVIN],
    prefixes: "",
  },
  pressure: {
    base: "Pa",
    shown: same([{ symbol: "hPa", spellings: ["mbar"], factor: 100 }]),
    typed: [
      { symbol: "kPa", factor: 1e3 },
      { symbol: "Pa", factor: 1 },
      { symbol: "bar", factor: 1e5 },
    ],
    prefixes: "",
  },
  voltage: engineering("V", "m", "M"),
  current: engineering("A", "m", "k"),
  power: engineering("W", "m", "M"),
  apparentPower: engineering("VA", "", "M"),
  energy: engineering("J", "µ", "k"),
  charge: engineering("C", "n", ""),
  resistance: engineering("Ω", "m", "M"),
  inductance: engineering("H", "n", ""),
  capacitance: engineering("F", "p", ""),
  fieldStrength: {
    base: "V/m",
    shown: same([
      { symbol: "V/cm", factor: 100 },
      { symbol: "kV/cm", factor: 1e5 },
    ]),
    typed: [
      { symbol: "kV/m", factor: 1e3 },
      { symbol: "kV/mm", factor: 1e6 },
    ],
    prefixes: "kM",
  },
  fieldPerVolt: fixed("1/m"),
  speed: engineering("m/s", "", "k"),
  capacitancePerLength: {
    base: "F/m",
    shown: same([{ symbol: "pF/m", factor: 1e-12 }]),
    typed: [{ symbol: "pF/cm", factor: 1e-10 }],
    prefixes: "pnµ",
  },
  energyPerCurrent: engineering("J/A", "µ", ""),
  thermalResistance: engineering("K/W", "m", ""),
  fluxDensity: engineering("T", "m", ""),
};

/** The unit assumed for a bare number where none is shown: millimetres or inches, microseconds, kilohertz … */
const BARE: Partial<Record<Dimension, string>> = {
  time: "µs",
  frequency: "kHz",
  inductance: "µH",
  capacitance: "nF",
  charge: "µC",
  resistance: "Ω",
  voltage: "V",
  current: "A",
  power: "W",
  apparentPower: "VA",
  energy: "J",
  fieldStrength: "kV/cm",
  speed: "m/s",
  energyPerCurrent: "µJ/A",
  thermalResistance: "K/W",
  fluxDensity: "T",
};

/** Unit of a bare number where the field shows none. */
export function preferredUnit(dimension: Dimension, system: UnitSystem): Unit {
  const { shown } = QUANTITIES[dimension];
  return shown[system].find((unit) => unit.symbol === BARE[dimension]) ?? shown[system][0];
}

/**
 * The unit of a field, whatever its value: a bare number means the same from one entry to the next.
 * @param usual SI, the field's usual value; null if it has none
 */
export function fieldUnit(usual: number | null, dimension: Dimension, system: UnitSystem): Unit {
  return usual === null ? preferredUnit(dimension, system) : shownUnit(usual, dimension, system);
}

/**
 * The unit to show a value in: the largest that gives a number of at least 1, or of at least 2 for the
 * metre and 10 for the foot, because a drawing is read in millimetres and inches.
 */
export function shownUnit(value: number, dimension: Dimension, system: UnitSystem): Unit {
  const units = QUANTITIES[dimension].shown[system];
  if (value === 0) return preferredUnit(dimension, system);
  const least = (unit: Unit): number => (unit.symbol === "m" ? 2 : unit.symbol === "ft" ? 10 : 1);
  // half a digit below the limit, so that 999.96 does not show as 1000
  const reaches = (unit: Unit): boolean => Math.abs(value) >= least(unit) * unit.factor * (1 - 5e-5);
  return units.findLast(reaches) ?? units[0];
}
