import type { Field } from "../field";
import { number } from "./declare";

export const TANK_FIELDS: readonly Field[] = [
  number("tank.unit.capacitance", "Unit capacitance", "capacitance", {
    range: [1e-10, 1e-4],
    default: 2e-7,
    help: [
      "Capacitance of one capacitor of the bank.",
      "Bridge meter on a unit, or its print.",
      "50 to 500 nF, film, made for pulses.",
    ],
  }),
  number("tank.unit.dcVoltage", "Unit DC voltage rating", "voltage", {
    range: [50, 50e3],
    default: 2000,
    help: [
      "Rated direct voltage of a unit; at the operating frequency the data sheet allows less.",
      "From the print and the data sheet.",
      "1 to 3 kV.",
    ],
  }),
  number("tank.unit.rmsCurrent", "Unit RMS current", "current", {
    range: [0.1, 1000],
    default: 17,
    help: [
      "RMS current that a unit carries for long.",
      "Data sheet, at the operating frequency.",
      "5 to 40 A.",
    ],
  }),
  number("tank.unit.peakCurrent", "Unit peak current", "current", {
    range: [1, 20e3],
    default: 380,
    help: [
      "Repetitive peak current of a unit: its dV/dt rating times its capacitance.",
      "Data sheet.",
      "200 to 1000 A.",
    ],
  }),
  number("tank.unit.dissipationFactor", "Dissipation factor", "ratio", {
    range: [1e-5, 0.05],
    default: 0.0007,
    meaning: "zero or more",
    help: [
      "tan δ of the dielectric at the operating frequency.",
      "Data sheet, near 100 kHz.",
      "0.0003 to 0.001 for polypropylene.",
    ],
  }),
  number("tank.unitsInSeries", "Units in series", "count", {
    range: [1, 100],
    default: 6,
    meaning: "positive whole",
    help: ["Units one after the other in a string.", "Count them.", "2 to 10."],
  }),
  number("tank.strings", "Strings in parallel", "count", {
    range: [1, 100],
    default: 3,
    meaning: "positive whole",
    help: ["Strings side by side.", "Count them.", "1 to 10."],
  }),
  number("tank.wantedCapacitance", "Wanted capacitance", "capacitance", {
    range: [1e-9, 1e-4],
    default: null,
    nullable: true,
    help: [
      "Capacitance that arrangements of units are proposed for; none takes the present bank's.",
      "From the tuning: what brings the suggested tap where you want it.",
      "20 to 500 nF.",
    ],
  }),
  number("tank.unitCost", "Price of a unit", "ratio", {
    range: [0, 1e5],
    default: null,
    nullable: true,
    meaning: "zero or more",
    help: [
      "What one unit costs, in your money; the proposals then show the bank's price.",
      "From the offer.",
      "1 to 30.",
    ],
  }),
];
