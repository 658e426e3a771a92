import { act, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { defaultArrangement } from "../../../src/design/arrangement";
import { pierHallLeft, pierHallRight } from "../../../src/design/examples";
import { Live } from "../../../src/panels/score/live/Live";
import { readMessage } from "../../../src/panels/score/live/useMidiInput";
import { backToRealTimers } from "../../realTimers";

/** A clock that stands until it is moved, and the pulses' buffers that were started on it. */
const audio = { time: 0, started: [] as number[] };

class StillAudioContext {
  sampleRate = 48_000;
  destination = {};
  get currentTime() {
    return audio.time;
  }
  createGain = () => ({ gain: { value: 1 }, connect: <Node,>(node: Node) => node });
  createBiquadFilter = () => ({
    type: "",
    frequency: { value: 0 },
    connect: <Node,>(node: Node) => node,
  });
  createBuffer = (_channels: number, length: number) => ({ getChannelData: () => new Float32Array(length) });
  createBufferSource = () => ({
    buffer: null,
    connect: () => {},
    start: (at: number) => audio.started.push(at),
  });
  resume = async () => {};
  close = async () => {};
}

function pass(seconds: number) {
  act(() => {
    for (let step = 0; step < seconds / 0.02; step++) {
      audio.time += 0.02;
      vi.advanceTimersByTime(20);
    }
  });
}

const designs = { left: pierHallLeft, right: pierHallRight };

function open(voices = 3, onTime = defaultArrangement.onTime) {
  const arrangement = { ...defaultArrangement, voices, onTime };
  const { container } = render(<Live designs={designs} arrangement={arrangement} />);
  const details = container.querySelector("details");
  if (!details) throw new Error("no details");
  details.open = true;
  fireEvent(details, new Event("toggle"));
}

const key = (name: string) => screen.getByRole("button", { name });

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("AudioContext", StillAudioContext);
  audio.time = 0;
  audio.started = [];
});

afterEach(() => {
  backToRealTimers();
  vi.unstubAllGlobals();
});

describe("playing by hand", () => {
  it("sounds a key while it is held, with its rate, on-time and duty", () => {
    open();
    fireEvent.pointerDown(key("A3"));
    pass(1);
    expect(key("A3")).toHaveAttribute("aria-pressed", "true");
    expect(screen.getByText(/A3: 220.Hz, on-time 100.µs, duty alone 2\.20.%/)).toBeInTheDocument();
    const window = pierHallLeft.interrupter.dutyWindow;
    pass(2 * window);
    const duty = Number.parseFloat(screen.getByLabelText("Present duty").textContent ?? "");
    expect(duty).toBeGreaterThan(1.9);
    expect(duty).toBeLessThanOrEqual(100 * pierHallLeft.interrupter.dutyLimit);
    fireEvent.pointerUp(key("A3"));
    const sounded = audio.started.length;
    expect(sounded).toBeGreaterThan(20);
    pass(2 * window + 1);
    expect(audio.started).toHaveLength(sounded);
    expect(screen.getByText("No tone is sounding.")).toBeInTheDocument();
    expect(Number.parseFloat(screen.getByLabelText("Present duty").textContent ?? "")).toBe(0);
  });

  it("follows the computer's keys, one press however long it repeats, and falls silent with the focus", () => {
    open();
    act(() => key("C3").focus());
    fireEvent.keyDown(key("C3"), { code: "KeyD" });
    fireEvent.keyDown(key("C3"), { code: "KeyD", repeat: true });
    expect(key("E3")).toHaveAttribute("aria-pressed", "true");
    fireEvent.keyDown(key("C3"), { code: "KeyG" });
    fireEvent.keyUp(key("C3"), { code: "KeyD" });
    expect(key("E3")).toHaveAttribute("aria-pressed", "false");
    expect(key("G3")).toHaveAttribute("aria-pressed", "true");
    act(() => key("C3").blur());
    expect(key("G3")).toHaveAttribute("aria-pressed", "false");
  });

  it("leaves the shortcuts of the page alone", () => {
    open();
    fireEvent.keyDown(key("C3"), { code: "KeyS", ctrlKey: true });
    expect(screen.getByText("No tone is sounding.")).toBeInTheDocument();
  });

  it("says what the interrupter shortens", () => {
    open(3, 2e-3);
    fireEvent.pointerDown(key("C3"));
    expect(screen.getByText(/C3: .*shortened from 2\.00.ms/)).toBeInTheDocument();
  });

  it("marks the keys that are shortened with what limits them, in words too", () => {
    open();
    fireEvent.click(key("Octave up"));
    fireEvent.click(key("Octave up"));
    expect(key("C5")).toHaveAttribute("title", "Shortened by mains current");
    expect(key("A5")).toHaveAttribute("title", "Shortened by duty");
    expect(screen.getByText(/^Keys shortened by/)).toHaveTextContent(/M mains current, D duty/);
    fireEvent.click(key("Octave down"));
    fireEvent.click(key("Octave down"));
    fireEvent.click(key("Octave down"));
    expect(screen.getByText("None of these keys is shortened.")).toBeInTheDocument();
  });

  it("reads a key that is pointed at: duty, power, mains current and junction", () => {
    open();
    fireEvent.pointerEnter(key("A3"));
    const reading = screen.getByText(/^A3: /);
    expect(reading).toHaveTextContent(/duty alone 2\.20.%, [\d.]+.k?W, mains [\d.]+.A, junction [\d.]+.°C/);
    fireEvent.pointerLeave(key("A3"));
    expect(screen.queryByText(/^A3: /)).not.toBeInTheDocument();
  });

  it("lists the longest on-times of the range with what limits each stretch", () => {
    open();
    expect(screen.getByRole("img", { name: /Longest on-time of each note/ })).toBeInTheDocument();
    const ranges = screen.getAllByRole("listitem").map((each) => each.textContent);
    expect(ranges[0]).toMatch(/^G1 – .*by over-current limit$/);
    expect(ranges.at(-1)).toMatch(/no pulse, by shortest gap$/);
    expect(document.body.textContent).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("never sounds more voices than are set", () => {
    open(2);
    for (const name of ["C3", "E3", "G3"]) fireEvent.pointerDown(key(name));
    for (const name of ["E3", "G3"]) expect(key(name)).toHaveAttribute("aria-pressed", "true");
    expect(screen.getAllByRole("button", { pressed: true })).toHaveLength(2);
  });

  it("plays the single tone of the interrupter until it is stopped", () => {
    open();
    fireEvent.click(key("Play single tone"));
    pass(0.5);
    expect(screen.getByText(/^Single tone: /)).toBeInTheDocument();
    expect(audio.started.length).toBeGreaterThan(0);
    fireEvent.click(key("Stop single tone"));
    expect(screen.getByText("No tone is sounding.")).toBeInTheDocument();
  });
});

describe("a MIDI message", () => {
  it("is a note, a release or silence, and anything else is none", () => {
    const heard: string[] = [];
    const listener = {
      onNote: (note: number, velocity: number) => heard.push(`on ${note} ${velocity}`),
      onRelease: (note: number) => heard.push(`off ${note}`),
      onSilence: () => heard.push("silence"),
    };
    // MIDI 1.0 Detailed Specification, tables of channel voice and mode messages
    for (const bytes of [
      [0x91, 60, 90],
      [0x91, 60, 0],
      [0x80, 62, 64],
      [0xb3, 123, 0],
      [0xb3, 7, 100],
      [0xf8],
      [],
    ])
      readMessage(Uint8Array.from(bytes), listener);
    expect(heard).toEqual(["on 60 90", "off 60", "off 62", "silence"]);
  });
});
