import { added, choice, group, list, number, numberOrNone } from "./declare";
import { POSITIVE_WHOLE, ZERO_OR_MORE } from "./meaning";

const MOST_FOSTER_ELEMENTS = 12;

const supply = group({
  arrangement: choice(
    "Arrangement",
    ["bridge rectifier", "doubler", "three-phase bridge", "bench"],
    [
      "How the bus voltage is made from mains.",
      "From your wiring; work on it only unplugged and discharged.",
      "Bridge rectifier on 230 V, doubler on 120 V.",
    ],
  ),
  mainsVoltage: number("Mains voltage", "voltage", {
    range: [10, 700],
    default: 230,
    help: [
      "RMS mains voltage, line to line for three phases; for a bench supply its DC voltage.",
      "True-RMS meter of the right category.",
      "120, 230 or 400 V.",
    ],
  }),
  mainsFrequency: number("Mains frequency", "frequency", {
    range: [40, 70],
    default: 50,
    help: ["Frequency of the mains.", "Set by the country.", "50 or 60 Hz."],
  }),
  sourceResistance: added(
    number("Source resistance", "resistance", {
      range: [0, 20],
      default: 0.4,
      meaning: ZERO_OR_MORE,
      help: [
        "Resistance of mains and leads up to the rectifier.",
        "Voltage drop at a known current.",
        "0.2 to 1 Ω on an ordinary circuit.",
      ],
    }),
  ),
  sourceInductance: added(
    number("Source inductance", "inductance", {
      range: [0, 0.05],
      default: 2e-4,
      meaning: ZERO_OR_MORE,
      help: [
        "Inductance of mains and leads, with a choke where there is one.",
        "From the choke's label; mains alone has a few tenths of a millihenry.",
        "0.1 to 2 mH.",
      ],
    }),
  ),
  circuitCurrent: added(
    number("Circuit current", "current", {
      range: [1, 125],
      default: 16,
      help: ["Rated current of the mains circuit.", "Marking on the breaker.", "13 to 32 A."],
    }),
  ),
  prechargeResistance: added(
    number("Pre-charge resistor", "resistance", {
      range: [0.1, 10e3],
      default: 47,
      help: [
        "Resistor that charges the reservoir before the main contactor closes.",
        "Colour code or meter, discharged.",
        "22 to 220 Ω.",
      ],
    }),
  ),
  dischargeResistance: added(
    number("Discharge resistor", "resistance", {
      range: [10, 1e6],
      default: 22e3,
      help: [
        "Resistor across the reservoir that discharges it when mains is off.",
        "Colour code or meter, discharged.",
        "10 to 47 kΩ.",
      ],
    }),
  ),
});

const device = group({
  voltageRating: number("Voltage rating", "voltage", {
    range: [20, 6500],
    default: 650,
    help: ["Collector–emitter or drain–source voltage rating.", "Data sheet.", "600, 650 or 1200 V."],
  }),
  pulseCurrentRating: number("Pulse current rating", "current", {
    range: [1, 20e3],
    default: 600,
    help: [
      "Repetitive peak current of one device.",
      "Data sheet, for the pulse length used.",
      "200 to 2000 A.",
    ],
  }),
  onStateVoltage: number("On-state voltage", "voltage", {
    range: [0, 10],
    default: 1,
    meaning: ZERO_OR_MORE,
    help: [
      "Threshold voltage of the linear on-state model; 0 for a MOSFET.",
      "Tangent to the data sheet's on-state curve at the pulse current.",
      "0.8 to 1.2 V for an IGBT.",
    ],
  }),
  onStateResistance: number("On-state resistance", "resistance", {
    range: [0, 10],
    default: 0.0045,
    meaning: ZERO_OR_MORE,
    help: [
      "Slope of the linear on-state model.",
      "Tangent to the data sheet's on-state curve.",
      "2 to 20 mΩ.",
    ],
  }),
  turnOffEnergyPerAmpere: number("Turn-off energy per ampere", "energyPerCurrent", {
    range: [0, 0.01],
    default: 3.5e-5,
    meaning: ZERO_OR_MORE,
    help: [
      "Energy lost at each turn-off, per ampere switched, at the test voltage.",
      "Data sheet: turn-off energy divided by its test current.",
      "10 to 80 µJ/A.",
    ],
  }),
  turnOffTestVoltage: number("Turn-off test voltage", "voltage", {
    range: [10, 5000],
    default: 400,
    help: ["Voltage at which the turn-off energy is stated.", "Data sheet.", "300 to 600 V."],
  }),
  gateCharge: number("Gate charge", "charge", {
    range: [1e-9, 1e-4],
    default: 1.7e-6,
    help: ["Total gate charge for the swing used.", "Data sheet.", "0.1 to 5 µC."],
  }),
  gateVoltage: number("Gate swing", "voltage", {
    range: [5, 60],
    default: 18,
    help: [
      "Total swing of the gate, from off to on.",
      "Oscilloscope at the gate, with low bus voltage.",
      "18 to 36 V.",
    ],
  }),
  gateResistance: added(
    number("Gate resistance", "resistance", {
      range: [0, 100],
      default: 4.7,
      meaning: ZERO_OR_MORE,
      help: ["Resistor in series with each gate, driver included.", "Colour code.", "2 to 10 Ω."],
    }),
  ),
  parallelDevices: added(
    number("Devices in parallel", "count", {
      range: [1, 20],
      default: 1,
      meaning: POSITIVE_WHOLE,
      help: ["Devices in parallel in each switch.", "Count them.", "1 or 2."],
    }),
  ),
  /** Foster network, junction to case, of one device */
  thermal: list(
    group({
      resistance: number("Thermal resistance", "thermalResistance", {
        range: [1e-5, 10],
        default: 0.05,
        help: [
          "Resistance of one Foster element, junction to case.",
          "Data sheet: table beside the transient thermal impedance.",
          "1 to 200 mK/W.",
        ],
      }),
      timeConstant: number("Time constant", "time", {
        range: [1e-6, 100],
        default: 0.018,
        help: [
          "Time constant of one Foster element.",
          "Data sheet: table beside the transient thermal impedance.",
          "0.1 ms to 0.5 s.",
        ],
      }),
    }),
    { minLength: 1, maxLength: MOST_FOSTER_ELEMENTS },
  ),
  caseTemperature: number("Case temperature", "temperature", {
    range: [253.15, 423.15],
    default: 318.15,
    help: [
      "Temperature of the device's case in operation.",
      "Thermocouple under the device; never with the bus live.",
      "35 to 60 °C.",
    ],
  }),
  junctionLimit: number("Junction limit", "temperature", {
    range: [323.15, 523.15],
    default: 423.15,
    help: ["Highest junction temperature allowed.", "Data sheet.", "150 or 175 °C."],
  }),
});

const commutation = group({
  mode: choice(
    "Commutation",
    ["primary current", "fixed frequency"],
    [
      "What times the bridge's switching: the primary current's zero crossings, or a fixed frequency.",
      "From your driver.",
      "Primary current.",
    ],
  ),
  leadTime: number("Lead time", "time", {
    range: [0, 1e-5],
    default: 5.5e-7,
    meaning: ZERO_OR_MORE,
    help: [
      "How far ahead of the current's zero crossing the comparator switches.",
      "Oscilloscope: comparator output against current zero.",
      "0.2 to 1 µs: the driver's delay plus a margin.",
    ],
  }),
  delay: number("Delay", "time", {
    range: [0, 1e-5],
    default: 2.5e-7,
    meaning: ZERO_OR_MORE,
    help: [
      "From the comparator's edge to the switch being off.",
      "Oscilloscope, comparator to gate.",
      "0.1 to 0.8 µs.",
    ],
  }),
  deadTime: number("Dead time", "time", {
    range: [0, 1e-5],
    default: 3e-7,
    meaning: ZERO_OR_MORE,
    help: ["From one diagonal off to the other diagonal on.", "Oscilloscope, gate to gate.", "0.2 to 1 µs."],
  }),
  frequency: added(
    numberOrNone("Fixed frequency", "frequency", {
      range: [5e3, 5e6],
      default: null,
      help: [
        "Frequency of the bridge if it is fixed; if empty, the primary's resonance is used.",
        "From your driver.",
        "Between the two poles or at one of them.",
      ],
    }),
  ),
});

const currentTransformer = group({
  /** one transformer, or two in cascade */
  turns: list(
    number("Transformer turns", "turns", {
      range: [5, 2000],
      default: 40,
      help: [
        "Turns of a current transformer; the ratios of two in cascade multiply.",
        "Count them.",
        "30 to 50 each.",
      ],
    }),
    { minLength: 1, maxLength: 2 },
  ),
  burden: number("Burden", "resistance", {
    range: [0.1, 1000],
    default: 6.8,
    help: ["Resistor across the last transformer.", "Ohmmeter.", "3 to 50 Ω."],
  }),
  coreArea: added(
    number("Core area", "area", {
      range: [1e-6, 1e-2],
      default: 5e-5,
      help: ["Cross-section of one transformer's core.", "Data sheet of the core.", "0.3 to 2 cm²."],
    }),
  ),
  saturationFluxDensity: added(
    number("Saturation", "fluxDensity", {
      range: [0.05, 2],
      default: 0.3,
      help: [
        "Flux density at which the core saturates, warm.",
        "Data sheet of the core's material.",
        "0.25 to 0.35 T for ferrite.",
      ],
    }),
  ),
  comparatorVoltage: added(
    numberOrNone("Comparator level", "voltage", {
      range: [0.05, 30],
      default: null,
      help: [
        "Voltage at the burden at which the comparator trips; if empty, the level that the limit needs.",
        "Meter at the comparator's reference.",
        "1 to 5 V.",
      ],
    }),
  ),
});

/** From the mains to the primary: supply, reservoir, bridge and its control. */
export const driveFields = group({
  supply,
  reservoirCapacitance: number("Reservoir capacitance", "capacitance", {
    range: [1e-6, 1],
    default: 0.0033,
    help: [
      "Capacitance across the whole bus.",
      "Marking; two equal units in series have half the capacitance of one.",
      "1 to 10 mF.",
    ],
  }),
  reservoirSeriesResistance: added(
    number("Reservoir series resistance", "resistance", {
      range: [0, 2],
      default: 0.02,
      meaning: ZERO_OR_MORE,
      help: [
        "Equivalent series resistance of the reservoir.",
        "Data sheet, or LCR meter at 10 kHz.",
        "5 to 50 mΩ.",
      ],
    }),
  ),
  bridge: choice(
    "Bridge",
    ["full", "half"],
    [
      "A full bridge applies plus and minus the bus voltage; a half bridge half of it, with the load returning to the reservoir's midpoint.",
      "From your wiring.",
      "Full for large coils, half for small ones.",
    ],
  ),
  switch: device,
  commutation,
  overCurrentLimit: number("Over-current limit", "current", {
    range: [1, 20e3],
    default: 480,
    help: [
      "Primary current at which the limit acts.",
      "Comparator level times the transformer's ratio over the burden.",
      "60 to 80 % of the pulse rating.",
    ],
  }),
  overCurrentAction: added(
    choice(
      "Limit action",
      ["end burst", "end half cycle"],
      ["Whether the limit ends the burst or only the half cycle.", "From your driver.", "End burst."],
    ),
  ),
  currentTransformer,
});
