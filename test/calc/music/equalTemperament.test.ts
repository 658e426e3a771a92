import { describe, expect, it } from "vitest";
import { keyFrequency, keyName } from "../../../src/calc/music/equalTemperament";

// ISO 16 reference pitch; the table as published by J. Wolfe (UNSW), four decimals
const PUBLISHED: [string, number, number][] = [
  ["A0", 21, 27.5],
  ["C1", 24, 32.7032],
  ["E1", 28, 41.2034],
  ["C2", 36, 65.4064],
  ["G2", 43, 97.9989],
  ["A2", 45, 110],
  ["C3", 48, 130.8128],
  ["C4", 60, 261.6256],
  ["A4", 69, 440],
  ["C5", 72, 523.2511],
  ["C8", 108, 4186.009],
];

describe("the frequency of a key", () => {
  it.each(PUBLISHED)("%s, key %i, is %f Hz", (name, key, frequency) => {
    expect(keyFrequency(key)).toBeCloseTo(frequency, 3);
    expect(keyName(key)).toBe(name);
  });
});
