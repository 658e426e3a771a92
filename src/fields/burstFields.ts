import { added, choice, group, number, variants } from "./declare";
import { ZERO_OR_MORE } from "./meaning";

/** The interrupter's settings and its limits. */
export const interrupterFields = group({
  onTime: number("On-time", "time", {
    range: [0, 2e-3],
    default: 1.2e-4,
    meaning: ZERO_OR_MORE,
    help: [
      "How long one burst drives the primary.",
      "Oscilloscope at the interrupter's output.",
      "50 to 200 µs.",
    ],
  }),
  repetitionRate: number("Repetition rate", "frequency", {
    range: [1, 4000],
    default: 120,
    help: [
      "Bursts per second; it sets the pitch of the tone.",
      "Counter at the interrupter's output.",
      "50 to 500 Hz.",
    ],
  }),
  longestOnTime: number("Longest on-time", "time", {
    range: [1e-6, 5e-3],
    default: 1.8e-4,
    help: [
      "The on-time that the interrupter never exceeds.",
      "Its setting, checked on an oscilloscope.",
      "120 to 250 µs.",
    ],
  }),
  shortestGap: number("Shortest gap", "time", {
    range: [1e-5, 0.1],
    default: 6e-4,
    help: [
      "From the end of a pulse to the start of the next.",
      "Its setting, checked on an oscilloscope.",
      "0.4 to 2 ms.",
    ],
  }),
  dutyLimit: number("Duty limit", "percent", {
    range: [0.001, 0.5],
    default: 0.05,
    help: ["Largest share of on-time within any duty window.", "Its setting.", "3 to 10 %."],
  }),
  dutyWindow: number("Duty window", "time", {
    range: [1e-3, 10],
    default: 0.25,
    help: ["The sliding window over which the duty limit applies.", "Its setting.", "0.1 to 1 s."],
  }),
});

/** The spark that is simulated. */
export const sparkFields = group({
  length: number("Spark length", "length", {
    range: [0, 10],
    default: 0.7,
    meaning: ZERO_OR_MORE,
    help: [
      "Length of the simulated spark; 0 for none.",
      "Scale a photograph, from the point to the spark's end.",
      "One to two times the winding length.",
    ],
  }),
  capacitancePerLength: number("Capacitance per length", "capacitancePerLength", {
    range: [0, 5e-11],
    default: 5e-12,
    meaning: ZERO_OR_MORE,
    help: [
      "Capacitance that a spark adds per metre (common practice, no source).",
      "Fit to the measured shift of the resonance.",
      "3 to 8 pF/m.",
    ],
  }),
  resistance: number("Resistance", "resistance", {
    range: [1e3, 1e7],
    default: 220e3,
    meaning: ZERO_OR_MORE,
    help: [
      "Resistance of the spark load (common practice, no source).",
      "Fit to the measured loaded Q.",
      "100 to 500 kΩ.",
    ],
  }),
  topology: added(
    choice(
      "Spark circuit",
      ["series", "parallel"],
      [
        "Whether the spark's resistance and capacitance are in series or in parallel.",
        "A modelling choice; both are in use.",
        "Series.",
      ],
    ),
  ),
  growth: added(
    choice(
      "Growth",
      ["full from the start", "with the burst"],
      [
        "Whether the spark load is present from the first cycle or grows during the burst (common practice, no source).",
        "A modelling choice.",
        "Full from the start.",
      ],
    ),
  ),
  growthRate: added(
    number("Growth rate", "speed", {
      range: [100, 1e5],
      default: 5000,
      help: [
        "How fast the spark grows once it has broken out (common practice, no source).",
        "High-speed film.",
        "2 to 20 km/s.",
      ],
    }),
  ),
});

/** What the primary is tuned to. */
export const tuningAimFields = variants(
  "kind",
  {
    unloaded: {},
    spark: {
      length: number("Spark tuned for", "length", {
        range: [0, 10],
        default: 0.7,
        meaning: ZERO_OR_MORE,
        help: [
          "Length of the spark whose load lowers the target frequency.",
          "The spark length that you expect.",
          "50 to 100 % of the longest spark.",
        ],
      }),
    },
    "most energy": {},
  },
  {
    label: "Tuning aim",
    help: [
      "What the primary is tuned to: the unloaded secondary, the secondary with a spark, or the most energy into the spark.",
      "Your decision.",
      "A spark of the length you expect.",
    ],
  },
);
