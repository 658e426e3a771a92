import type { Field } from "../field";
import { choice, number } from "./declare";

const SUPPLY: readonly Field[] = [
  choice(
    "drive.supply.arrangement",
    "Arrangement",
    ["bridge rectifier", "doubler", "three-phase bridge", "bench"],
    [
      "How mains becomes the bus voltage.",
      "From your wiring; work on it only unplugged and discharged.",
      "Bridge rectifier on 230 V, doubler on 120 V.",
    ],
  ),
  number("drive.supply.mainsVoltage", "Mains voltage", "voltage", {
    range: [10, 700],
    default: 230,
    help: [
      "RMS mains voltage, line to line for three phases; for a bench supply its direct voltage.",
      "True-RMS meter of the right category.",
      "120, 230 or 400 V.",
    ],
  }),
  number("drive.supply.mainsFrequency", "Mains frequency", "frequency", {
    range: [40, 70],
    default: 50,
    help: ["Mains frequency.", "Given by the country.", "50 or 60 Hz."],
  }),
  number("drive.supply.sourceResistance", "Source resistance", "resistance", {
    range: [0, 20],
    default: 0.4,
    meaning: "zero or more",
    help: [
      "Resistance of mains and leads up to the rectifier.",
      "Voltage drop at a known current.",
      "0.2 to 1 Ω on an ordinary circuit.",
    ],
  }),
  number("drive.supply.sourceInductance", "Source inductance", "inductance", {
    range: [0, 0.05],
    default: 2e-4,
    meaning: "zero or more",
    help: [
      "Inductance of mains and leads, with a choke where there is one.",
      "From the choke's label; mains alone is some tenths of a millihenry.",
      "0.1 to 2 mH.",
    ],
  }),
  number("drive.supply.circuitCurrent", "Circuit current", "current", {
    range: [1, 125],
    default: 16,
    help: ["Rated current of the mains circuit.", "Print on the breaker.", "13 to 32 A."],
  }),
  number("drive.supply.prechargeResistance", "Pre-charge resistor", "resistance", {
    range: [0.1, 10e3],
    default: 47,
    help: [
      "Resistor that charges the reservoir before the main contactor closes.",
      "Colour code or meter, discharged.",
      "22 to 220 Ω.",
    ],
  }),
  number("drive.supply.dischargeResistance", "Discharge resistor", "resistance", {
    range: [10, 1e6],
    default: 22e3,
    help: [
      "Resistor across the reservoir that empties it when mains is off.",
      "Colour code or meter, discharged.",
      "10 to 47 kΩ.",
    ],
  }),
];

const BRIDGE: readonly Field[] = [
  number("drive.reservoirCapacitance", "Reservoir capacitance", "capacitance", {
    range: [1e-6, 1],
    default: 0.0033,
    help: [
      "Capacitance across the whole bus.",
      "Print; two equal units in series count half of one.",
      "1 to 10 mF.",
    ],
  }),
  number("drive.reservoirSeriesResistance", "Reservoir series resistance", "resistance", {
    range: [0, 2],
    default: 0.02,
    meaning: "zero or more",
    help: [
      "Equivalent series resistance of the reservoir.",
      "Data sheet, or LCR meter at 10 kHz.",
      "5 to 50 mΩ.",
    ],
  }),
  choice(
    "drive.bridge",
    "Bridge",
    ["full", "half"],
    [
      "Full bridge: plus and minus the bus. Half bridge: half of it, the load returning to the reservoir's midpoint.",
      "From your wiring.",
      "Full for large coils, half for small ones.",
    ],
  ),
];

const SWITCH: readonly Field[] = [
  number("drive.switch.voltageRating", "Voltage rating", "voltage", {
    range: [20, 6500],
    default: 650,
    help: ["Collector–emitter or drain–source rating.", "Data sheet.", "600, 650 or 1200 V."],
  }),
  number("drive.switch.pulseCurrentRating", "Pulse current rating", "current", {
    range: [1, 20e3],
    default: 600,
    help: [
      "Repetitive peak current of one device.",
      "Data sheet, for the pulse length used.",
      "200 to 2000 A.",
    ],
  }),
  number("drive.switch.onStateVoltage", "On-state voltage", "voltage", {
    range: [0, 10],
    default: 1,
    meaning: "zero or more",
    help: [
      "Threshold of the on-state line; 0 for a MOSFET.",
      "Tangent to the data sheet's on-state curve at the pulse current.",
      "0.8 to 1.2 V for an IGBT.",
    ],
  }),
  number("drive.switch.onStateResistance", "On-state resistance", "resistance", {
    range: [0, 10],
    default: 0.0045,
    meaning: "zero or more",
    help: ["Slope of the on-state line.", "Tangent to the data sheet's on-state curve.", "2 to 20 mΩ."],
  }),
  number("drive.switch.turnOffEnergyPerAmpere", "Turn-off energy per ampere", "energyPerCurrent", {
    range: [0, 0.01],
    default: 3.5e-5,
    meaning: "zero or more",
    help: [
      "Energy lost at each turn-off, per ampere switched, at the test voltage.",
      "Data sheet: turn-off energy divided by its test current.",
      "10 to 80 µJ/A.",
    ],
  }),
  number("drive.switch.turnOffTestVoltage", "Turn-off test voltage", "voltage", {
    range: [10, 5000],
    default: 400,
    help: ["Voltage at which the turn-off energy is stated.", "Data sheet.", "300 to 600 V."],
  }),
  number("drive.switch.gateCharge", "Gate charge", "charge", {
    range: [1e-9, 1e-4],
    default: 1.7e-6,
    help: ["Total gate charge for the swing used.", "Data sheet.", "0.1 to 5 µC."],
  }),
  number("drive.switch.gateVoltage", "Gate swing", "voltage", {
    range: [5, 60],
    default: 18,
    help: [
      "Total swing of the gate, from off to on.",
      "Oscilloscope at the gate, with low bus voltage.",
      "18 to 36 V.",
    ],
  }),
  number("drive.switch.gateResistance", "Gate resistance", "resistance", {
    range: [0, 100],
    default: 4.7,
    meaning: "zero or more",
    help: ["Resistor in series with each gate, driver included.", "Colour code.", "2 to 10 Ω."],
  }),
  number("drive.switch.parallelDevices", "Devices in parallel", "count", {
    range: [1, 20],
    default: 1,
    meaning: "positive whole",
    help: ["Devices side by side in each switch.", "Count them.", "1 or 2."],
  }),
  number("drive.switch.thermal.*.resistance", "Thermal resistance", "thermalResistance", {
    range: [1e-5, 10],
    default: 0.05,
    help: [
      "Resistance of one Foster element, junction to case.",
      "Data sheet: table beside the transient thermal impedance.",
      "1 to 200 mK/W.",
    ],
  }),
  number("drive.switch.thermal.*.timeConstant", "Time constant", "time", {
    range: [1e-6, 100],
    default: 0.018,
    help: [
      "Time constant of one Foster element.",
      "Data sheet: table beside the transient thermal impedance.",
      "0.1 ms to 0.5 s.",
    ],
  }),
  number("drive.switch.caseTemperature", "Case temperature", "temperature", {
    range: [253.15, 423.15],
    default: 318.15,
    help: [
      "Temperature of the device's case while it plays.",
      "Thermocouple under the device; never with the bus live.",
      "35 to 60 °C.",
    ],
  }),
  number("drive.switch.junctionLimit", "Junction limit", "temperature", {
    range: [323.15, 523.15],
    default: 423.15,
    help: ["Highest junction temperature allowed.", "Data sheet.", "150 or 175 °C."],
  }),
];

const CONTROL: readonly Field[] = [
  choice(
    "drive.commutation.mode",
    "Commutation",
    ["primary current", "fixed frequency"],
    [
      "What decides when the bridge turns over: the primary current's zero crossings, or a fixed frequency.",
      "From your driver.",
      "Primary current.",
    ],
  ),
  number("drive.commutation.leadTime", "Lead time", "time", {
    range: [0, 1e-5],
    default: 5.5e-7,
    meaning: "zero or more",
    help: [
      "How far ahead of the current's zero the comparator decides.",
      "Oscilloscope: decision against current zero.",
      "0.2 to 1 µs, the driver's delay and a little more.",
    ],
  }),
  number("drive.commutation.delay", "Delay", "time", {
    range: [0, 1e-5],
    default: 2.5e-7,
    meaning: "zero or more",
    help: [
      "From the comparator's decision to the switch being off.",
      "Oscilloscope, comparator to gate.",
      "0.1 to 0.8 µs.",
    ],
  }),
  number("drive.commutation.deadTime", "Dead time", "time", {
    range: [0, 1e-5],
    default: 3e-7,
    meaning: "zero or more",
    help: ["From one pair off to the other pair on.", "Oscilloscope, gate to gate.", "0.2 to 1 µs."],
  }),
  number("drive.commutation.frequency", "Fixed frequency", "frequency", {
    range: [5e3, 5e6],
    default: null,
    nullable: true,
    help: [
      "Frequency of the bridge where it is fixed; none takes the primary's resonance.",
      "From your driver.",
      "Between the two poles or at one of them.",
    ],
  }),
  number("drive.overCurrentLimit", "Over-current limit", "current", {
    range: [1, 20e3],
    default: 480,
    help: [
      "Primary current at which the limit acts.",
      "Comparator level times the transformer's ratio over the burden.",
      "60 to 80 % of the pulse rating.",
    ],
  }),
  choice(
    "drive.overCurrentAction",
    "Limit action",
    ["end burst", "end half cycle"],
    ["Whether the limit ends the burst or only the half cycle.", "From your driver.", "The burst."],
  ),
  number("drive.currentTransformer.turns.*", "Transformer turns", "turns", {
    range: [5, 2000],
    default: 40,
    help: ["Turns of a current transformer; two in cascade multiply.", "Count them.", "30 to 50 each."],
  }),
  number("drive.currentTransformer.burden", "Burden", "resistance", {
    range: [0.1, 1000],
    default: 6.8,
    help: ["Resistor across the last transformer.", "Meter.", "3 to 50 Ω."],
  }),
  number("drive.currentTransformer.coreArea", "Core area", "area", {
    range: [1e-6, 1e-2],
    default: 5e-5,
    help: ["Cross-section of one transformer's core.", "Data sheet of the core.", "0.3 to 2 cm²."],
  }),
  number("drive.currentTransformer.saturationFluxDensity", "Saturation", "fluxDensity", {
    range: [0.05, 2],
    default: 0.3,
    help: [
      "Flux density at which the core saturates, warm.",
      "Data sheet of the core's material.",
      "0.25 to 0.35 T for ferrite.",
    ],
  }),
  number("drive.currentTransformer.comparatorVoltage", "Comparator level", "voltage", {
    range: [0.05, 30],
    default: null,
    nullable: true,
    help: [
      "Voltage at the burden at which the comparator trips; none where it is set to what the limit needs.",
      "Meter at the comparator's reference.",
      "1 to 5 V.",
    ],
  }),
];

export const DRIVE_FIELDS: readonly Field[] = [...SUPPLY, ...BRIDGE, ...SWITCH, ...CONTROL];
