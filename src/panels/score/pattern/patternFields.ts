/** Fields of a test pattern; they are not saved. */
import type { PulsePattern } from "../../../calc/music/pulsePattern";
import { number } from "../../../fields/declare";
import { type NumberField, placed } from "../../../fields/field";
import { between, wholeBetween } from "../../../fields/meaning";

export const patternFields: Record<keyof PulsePattern, NumberField> = placed("pattern", {
  pulses: number("Pulses in a group", "count", {
    range: [1, 1000],
    default: 10,
    meaning: wholeBetween(1, 1000),
    help: [
      "Number of bursts in succession before the pause.",
      "Begin with one, then raise it while you watch the currents.",
      "1 to 20; common practice, no source.",
    ],
  }),
  rate: number("Rate within a group", "frequency", {
    range: [1, 2000],
    default: 100,
    meaning: between(0.1, 20_000),
    help: [
      "Repetition rate of the bursts of a group.",
      "Choose one at which the reservoir recharges between bursts.",
      "50 Hz to 200 Hz; common practice, no source.",
    ],
  }),
  onTime: number("On-time of each pulse", "time", {
    range: [1e-6, 1e-3],
    default: 40e-6,
    help: [
      "Requested on-time; the coil's limits shorten it if it is too long.",
      "Begin short and lengthen it step by step.",
      "20 µs to 100 µs on the bench; common practice, no source.",
    ],
  }),
  pause: number("Pause between groups", "time", {
    range: [0, 60],
    default: 1,
    meaning: between(0, 60),
    help: [
      "Time beyond one period between a group's last burst and the next group's first.",
      "Leave enough time to read the instruments and to reach the switch.",
      "0.5 s to 5 s; common practice, no source.",
    ],
  }),
  groups: number("Groups", "count", {
    range: [1, 100],
    default: 5,
    meaning: wholeBetween(1, 100),
    help: ["Number of groups.", "As many as the measurement needs.", "1 to 10; common practice, no source."],
  }),
});
