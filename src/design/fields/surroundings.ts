import type { Field } from "../field";
import { choice, number, onOff } from "./declare";

const PLACE: readonly Field[] = [
  number("air.temperature", "Air temperature", "temperature", {
    range: [243.15, 333.15],
    default: 293.15,
    help: ["Temperature of the air around the top load.", "Thermometer.", "10 to 30 °C."],
  }),
  number("air.pressure", "Air pressure", "pressure", {
    range: [5e4, 1.1e5],
    default: 101325,
    help: [
      "Pressure of the air; thin air breaks out earlier.",
      "Barometer, not reduced to sea level.",
      "1013 hPa at the sea, 900 hPa at 1000 m.",
    ],
  }),
  number("room.ceilingHeight", "Ceiling height", "length", {
    range: [0.5, 50],
    default: 4.2,
    nullable: true,
    help: [
      "Ceiling above the ground plane; none in the open.",
      "Rule or laser.",
      "Top load's height plus twice the spark.",
    ],
  }),
  number("room.wallDistance", "Wall distance", "length", {
    range: [0.3, 100],
    default: 3.5,
    nullable: true,
    help: ["Axis to the nearest wall; none in the open.", "Rule or laser.", "At least twice the spark."],
  }),
  number("room.audienceDistance", "Audience distance", "length", {
    range: [0.5, 500],
    default: 5,
    nullable: true,
    help: [
      "Axis to the nearest person.",
      "Rule or laser, to the barrier.",
      "Several sparks' length; local rules decide.",
    ],
  }),
  onOff("room.ceilingConducts", "Ceiling conducts", false, [
    "Whether the ceiling enters the electric field as a grounded surface; its clearance is judged either way.",
    "Metal deck or reinforcement: yes; plaster or timber: no.",
    "Off.",
  ]),
  onOff("room.wallConducts", "Walls conduct", false, [
    "Whether the walls enter the electric field as a grounded cylinder; their clearance is judged either way.",
    "Metal cladding or a cage: yes.",
    "Off.",
  ]),
];

const INTERRUPTER: readonly Field[] = [
  number("interrupter.onTime", "On-time", "time", {
    range: [0, 2e-3],
    default: 1.2e-4,
    meaning: "zero or more",
    help: [
      "How long one burst drives the primary.",
      "Oscilloscope at the interrupter's output.",
      "50 to 200 µs.",
    ],
  }),
  number("interrupter.repetitionRate", "Repetition rate", "frequency", {
    range: [1, 4000],
    default: 120,
    help: [
      "Bursts in a second; as a tone, its pitch.",
      "Counter at the interrupter's output.",
      "50 to 500 Hz.",
    ],
  }),
  number("interrupter.longestOnTime", "Longest on-time", "time", {
    range: [1e-6, 5e-3],
    default: 1.8e-4,
    help: [
      "What the interrupter never exceeds.",
      "Its setting, checked on an oscilloscope.",
      "120 to 250 µs.",
    ],
  }),
  number("interrupter.shortestGap", "Shortest gap", "time", {
    range: [1e-5, 0.1],
    default: 6e-4,
    help: [
      "From the end of a pulse to the start of the next.",
      "Its setting, checked on an oscilloscope.",
      "0.4 to 2 ms.",
    ],
  }),
  number("interrupter.dutyLimit", "Duty limit", "percent", {
    range: [0.001, 0.5],
    default: 0.05,
    help: ["Largest part of the time that is on-time, over any duty window.", "Its setting.", "3 to 10 %."],
  }),
  number("interrupter.dutyWindow", "Duty window", "time", {
    range: [1e-3, 10],
    default: 0.25,
    help: ["The sliding window that the duty limit holds over.", "Its setting.", "0.1 to 1 s."],
  }),
];

const SPARK: readonly Field[] = [
  number("spark.length", "Spark length", "length", {
    range: [0, 10],
    default: 0.7,
    meaning: "zero or more",
    help: [
      "Length of the spark that is simulated; 0 for none.",
      "Rule from the point to where it ends, on a photograph.",
      "Once to twice the winding length.",
    ],
  }),
  number("spark.capacitancePerLength", "Capacitance per length", "capacitancePerLength", {
    range: [0, 5e-11],
    default: 5e-12,
    meaning: "zero or more",
    help: [
      "Capacitance that a spark adds per metre (common practice, no source).",
      "Fit to the measured shift of the resonance.",
      "3 to 8 pF/m.",
    ],
  }),
  number("spark.resistance", "Resistance", "resistance", {
    range: [1e3, 1e7],
    default: 220e3,
    meaning: "zero or more",
    help: [
      "Resistance of the spark load (common practice, no source).",
      "Fit to the measured loaded Q.",
      "100 to 500 kΩ.",
    ],
  }),
  choice(
    "spark.topology",
    "Spark circuit",
    ["series", "parallel"],
    [
      "Whether resistance and capacitance of the spark stand in series or in parallel.",
      "A matter of the model; both are in use.",
      "Series.",
    ],
  ),
  choice(
    "spark.growth",
    "Growth",
    ["full from the start", "with the burst"],
    [
      "Whether the spark load is there from the first cycle or grows with the burst (common practice, no source).",
      "A matter of the model.",
      "Full from the start.",
    ],
  ),
  number("spark.growthRate", "Growth rate", "speed", {
    range: [100, 1e5],
    default: 5000,
    help: [
      "How fast the spark grows once it has broken out (common practice, no source).",
      "High-speed film.",
      "2 to 20 km/s.",
    ],
  }),
];

const AIM: readonly Field[] = [
  choice(
    "tuningAim.kind",
    "Tuning aim",
    ["unloaded", "spark", "most energy"],
    [
      "What the primary is tuned to: the unloaded secondary, the secondary with a spark, or most energy into the spark.",
      "Your decision.",
      "A spark of the length you expect.",
    ],
  ),
  number("tuningAim.length", "Spark tuned for", "length", {
    range: [0, 10],
    default: 0.7,
    meaning: "zero or more",
    help: [
      "Length of the spark whose load lowers the frequency aimed at.",
      "As the spark length you expect.",
      "Half to all of the longest spark.",
    ],
  }),
];

const CORRECTIONS: readonly Field[] = [
  onOff("corrections.former", "Dielectric former", false, [
    "Lets the former's permittivity lower the resonance.",
    "Wall and permittivity of the former.",
    "−0.06 to −0.14 % in frequency.",
  ]),
  onOff("corrections.floorConducts", "Floor carries flux away", false, [
    "Takes the floor as a perfect conductor for magnetic flux as well.",
    "Only for a metal floor right under the coil.",
    "+0.2 to +0.33 % in frequency.",
  ]),
  onOff("corrections.wireCurrent", "Skin effect on inductance", false, [
    "Lowers the secondary's inductance by what the skin effect takes out of the wire.",
    "Follows from the frequency.",
    "+0.03 to +0.05 % in frequency.",
  ]),
  number("corrections.lossAllowance", "Loss allowance", "percent", {
    range: [0, 2],
    default: 0,
    meaning: "zero or more",
    help: [
      "Part of each computed loss that is added for what is not modelled.",
      "Compare a measured Q with the computed one.",
      "0; 10 to 40 % brings it near real coils.",
    ],
  }),
];

export const SURROUNDINGS_FIELDS: readonly Field[] = [
  ...PLACE,
  ...INTERRUPTER,
  ...SPARK,
  ...AIM,
  ...CORRECTIONS,
];
