/** Numbers of a test pattern; they are set for the moment and not kept. */
import type { PulsePattern } from "../../../calc/music/pulsePattern";
import { number } from "../../../design/fields/declare";
import type { ScoreField } from "../../../design/fields/score";

const positive = { minimum: Number.MIN_VALUE, maximum: Number.MAX_VALUE };

export const patternFields: Record<keyof PulsePattern, ScoreField> = {
  pulses: {
    ...number("pattern.pulses", "Pulses in a group", "count", {
      range: [1, 1000],
      default: 10,
      meaning: "positive whole",
      help: [
        "How many bursts follow one another before the pause.",
        "Begin with one, then raise it while the currents are watched.",
        "1 to 20; common practice, no source.",
      ],
    }),
    limits: { minimum: 1, maximum: 1000 },
    whole: true,
  },
  rate: {
    ...number("pattern.rate", "Rate within a group", "frequency", {
      range: [1, 2000],
      default: 100,
      help: [
        "Repetition rate of the bursts of a group.",
        "Choose one at which the reservoir fills up between bursts.",
        "50 Hz to 200 Hz; common practice, no source.",
      ],
    }),
    limits: { minimum: 0.1, maximum: 20_000 },
    whole: false,
  },
  onTime: {
    ...number("pattern.onTime", "On-time of each pulse", "time", {
      range: [1e-6, 1e-3],
      default: 40e-6,
      help: [
        "On-time asked for; the limits of the coil shorten what is too long.",
        "Begin short and lengthen it step by step.",
        "20 µs to 100 µs on the bench; common practice, no source.",
      ],
    }),
    limits: positive,
    whole: false,
  },
  pause: {
    ...number("pattern.pause", "Pause between groups", "time", {
      range: [0, 60],
      default: 1,
      meaning: "zero or more",
      help: [
        "Time beyond the period from a group's last burst to the next group's first.",
        "Leave enough to read the instruments and to reach the switch.",
        "0.5 s to 5 s; common practice, no source.",
      ],
    }),
    limits: { minimum: 0, maximum: 60 },
    whole: false,
  },
  groups: {
    ...number("pattern.groups", "Groups", "count", {
      range: [1, 100],
      default: 5,
      meaning: "positive whole",
      help: [
        "How often the group is repeated.",
        "As many as the measurement needs.",
        "1 to 10; common practice, no source.",
      ],
    }),
    limits: { minimum: 1, maximum: 100 },
    whole: true,
  },
};
