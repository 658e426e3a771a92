import { added, group, number, numberOrNone } from "./declare";
import { POSITIVE_WHOLE, ZERO_OR_MORE } from "./meaning";

/** The capacitor bank: its units and their connection. */
export const tankFields = group({
  unit: group({
    capacitance: number("Unit capacitance", "capacitance", {
      range: [1e-10, 1e-4],
      default: 2e-7,
      help: [
        "Capacitance of one capacitor of the bank.",
        "LCR meter on a unit, or its marking.",
        "50 to 500 nF, pulse-rated film.",
      ],
    }),
    dcVoltage: number("Unit DC voltage rating", "voltage", {
      range: [50, 50e3],
      default: 2000,
      help: [
        "Rated DC voltage of a unit; at the operating frequency the data sheet allows less.",
        "Marking and data sheet.",
        "1 to 3 kV.",
      ],
    }),
    rmsCurrent: number("Unit RMS current", "current", {
      range: [0.1, 1000],
      default: 17,
      help: ["Continuous RMS current of a unit.", "Data sheet, at the operating frequency.", "5 to 40 A."],
    }),
    peakCurrent: number("Unit peak current", "current", {
      range: [1, 20e3],
      default: 380,
      help: [
        "Repetitive peak current of a unit: its dV/dt rating times its capacitance.",
        "Data sheet.",
        "200 to 1000 A.",
      ],
    }),
    dissipationFactor: number("Dissipation factor", "ratio", {
      range: [1e-5, 0.05],
      default: 0.0007,
      meaning: ZERO_OR_MORE,
      help: [
        "tan δ of the dielectric at the operating frequency.",
        "Data sheet, near 100 kHz.",
        "0.0003 to 0.001 for polypropylene.",
      ],
    }),
  }),
  unitsInSeries: number("Units in series", "count", {
    range: [1, 100],
    default: 6,
    meaning: POSITIVE_WHOLE,
    help: ["Units connected in series in each string.", "Count them.", "2 to 10."],
  }),
  strings: number("Strings in parallel", "count", {
    range: [1, 100],
    default: 3,
    meaning: POSITIVE_WHOLE,
    help: ["Strings connected in parallel.", "Count them.", "1 to 10."],
  }),
  wantedCapacitance: added(
    numberOrNone("Wanted capacitance", "capacitance", {
      range: [1e-9, 1e-4],
      default: null,
      help: [
        "Capacitance for which arrangements of units are proposed; if empty, the present bank's.",
        "From the tuning: the value that puts the suggested tap where you want it.",
        "20 to 500 nF.",
      ],
    }),
  ),
  unitCost: added(
    numberOrNone("Price of a unit", "ratio", {
      range: [0, 1e5],
      default: null,
      meaning: ZERO_OR_MORE,
      help: [
        "Price of one unit in your currency; the proposals then show the bank's price.",
        "From the supplier.",
        "1 to 30.",
      ],
    }),
  ),
});
