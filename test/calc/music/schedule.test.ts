import { describe, expect, it } from "vitest";
import { gateWave } from "../../../src/calc/music/gateWave";
import { scheduleCsv } from "../../../src/calc/music/scheduleCsv";

const LEFT = { starts: [1_000_000, 3_123_456_789], onTimes: [120_000, 99_999] };
const RIGHT = { starts: [2_000_000], onTimes: [50_000] };

describe("the schedule as CSV", () => {
  it("has one line a pulse, in order of time, with nine decimals", () => {
    expect(scheduleCsv({ left: LEFT, right: RIGHT })).toBe(
      "time,coil,onTime\n0.001000000,left,0.000120000\n0.002000000,right,0.000050000\n3.123456789,left,0.000099999\n",
    );
  });

  it("is a header alone where nothing sounds", () => {
    expect(scheduleCsv({ left: { starts: [], onTimes: [] } })).toBe("time,coil,onTime\n");
  });
});

describe("the schedule as a wave file", () => {
  const rate = 100_000; // a sample is 10 µs
  const bytes = gateWave({ left: LEFT, right: RIGHT }, 3.2, rate);
  const view = new DataView(bytes.buffer);
  const sample = (index: number, channel: number) => bytes[44 + index * 2 + channel];

  it("is a RIFF WAVE of two channels of 8 bits", () => {
    expect(String.fromCharCode(...bytes.subarray(0, 4), ...bytes.subarray(8, 16))).toBe("RIFFWAVEfmt ");
    expect([
      view.getUint16(20, true),
      view.getUint16(22, true),
      view.getUint32(24, true),
      view.getUint16(34, true),
    ]).toEqual([1, 2, rate, 8]);
    expect(view.getUint32(4, true)).toBe(bytes.length - 8);
    expect(view.getUint32(40, true)).toBe(bytes.length - 44);
  });

  it("is on where the gate is on, left and right apart", () => {
    expect([99, 100, 111, 112].map((index) => sample(index, 0))).toEqual([128, 255, 255, 128]);
    expect([199, 200, 204, 205].map((index) => sample(index, 1))).toEqual([128, 255, 255, 128]);
    expect(sample(100, 1)).toBe(128);
  });

  it("never lengthens a pulse: it begins at the next sample and ends at the last before its end", () => {
    const on = Array.from(bytes.subarray(44 + 312_000 * 2)).filter(
      (value, index) => index % 2 === 0 && value === 255,
    );
    expect(on).toHaveLength(9); // 99.999 µs hold nine whole samples of 10 µs
  });
});
