/** Fields of a score's arrangement and lanes and of a pair: they belong to the show, not to a design. */
import { group, number } from "./declare";
import { placed } from "./field";
import { between, wholeBetween, ZERO_OR_MORE } from "./meaning";

/** Every key still has a frequency when moved by −127 to 127 semitones. */
const FARTHEST_TRANSPOSE = 127;
const MOST_VOICES = 16;

/** How notes become on-times. */
const arrangement = {
  /** of a note of full velocity and level below the roll-off frequency */
  onTime: number("On-time at full velocity", "time", {
    range: [1e-6, 1e-3],
    default: 100e-6,
    meaning: ZERO_OR_MORE,
    help: [
      "On-time of a note of full velocity and level, below the roll-off frequency.",
      "Choose it from the burst: the on-time at which the spark is full-grown and the current still within its limit.",
      "50 µs to 200 µs; common practice, no source.",
    ],
  }),
  kneeRate: number("Roll-off frequency", "frequency", {
    range: [20, 5000],
    default: 523.25,
    help: [
      "Repetition rate above which on-times fall with pitch.",
      "Choose the rate at which a single note of full velocity comes near the duty limit.",
      "C5, 523 Hz; common practice, no source.",
    ],
  }),
  /** on-time falls as (roll-off frequency / rate)^exponent: 0 not at all, 1 at constant duty */
  pitchExponent: number("Roll-off exponent", "ratio", {
    range: [0, 3],
    default: 1,
    meaning: ZERO_OR_MORE,
    help: [
      "Exponent with which on-times fall above the roll-off frequency: 0 not at all, 1 at constant duty.",
      "Choose it by ear: higher makes treble softer.",
      "1; common practice, no source.",
    ],
  }),
  /** how many notes a coil may play at once */
  voices: number("Voices on a coil", "count", {
    range: [1, MOST_VOICES],
    default: 3,
    meaning: wholeBetween(1, MOST_VOICES),
    help: [
      "How many notes a coil may play at once; beyond that, the weakest is cut.",
      "Choose as many as sound clearly: every voice takes its share of the duty.",
      "1 to 4; common practice, no source.",
    ],
  }),
};

const lane = {
  transpose: number("Transposition in semitones", "count", {
    range: [-48, 48],
    default: 0,
    meaning: wholeBetween(-FARTHEST_TRANSPOSE, FARTHEST_TRANSPOSE),
    help: [
      "Semitones by which a part is transposed; positive is up.",
      "Transpose by octaves (12) to keep a part's harmony.",
      "−24 to 24.",
    ],
  }),
  level: number("Level", "percent", {
    range: [0, 1],
    default: 1,
    meaning: between(0, 1),
    help: [
      "Share of the on-time that a part's notes get.",
      "Lower an accompaniment until the melody stands out.",
      "50 % to 100 %.",
    ],
  }),
};

export const arrangementDeclaration = group(arrangement);
export const arrangementFields = placed("arrangement", arrangement);
export const laneFields = placed("lanes.*", lane);
export const spacingField = {
  ...number("Spacing of the coils", "length", {
    range: [0.3, 20],
    default: 2,
    help: [
      "Distance of the two coils, axis to axis.",
      "Measure on the floor between the centres of the two bases.",
      "Three times the spark length or more, so that sparks do not meet; common practice, no source.",
    ],
  }),
  path: "spacing",
};
