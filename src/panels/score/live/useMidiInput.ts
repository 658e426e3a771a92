import { useCallback, useEffect, useRef, useState } from "react";

export interface MidiListener {
  /** velocity 1 … 127 */
  onNote: (key: number, velocity: number) => void;
  onRelease: (key: number) => void;
  onSilence: () => void;
}

const ALL_SOUND_OFF = 120;
const ALL_NOTES_OFF = 123;

/** Source: midi, channel voice and channel mode messages. */
export function readMessage(data: Uint8Array, listener: MidiListener): void {
  const [status, first = 0, second = 0] = data;
  const kind = status & 0xf0;
  if (kind === 0x90 && second > 0) listener.onNote(first, second);
  else if (kind === 0x90 || kind === 0x80) listener.onRelease(first);
  else if (kind === 0xb0 && (first === ALL_SOUND_OFF || first === ALL_NOTES_OFF)) listener.onSilence();
}

/** Input from MIDI keyboards, once connected; `connect` is null if the browser does not support MIDI. */
export function useMidiInput(listener: MidiListener): { connect: (() => void) | null; state: string } {
  const latest = useRef(listener);
  latest.current = listener;
  const access = useRef<MIDIAccess | null>(null);
  const [state, setState] = useState("");

  const listen = useCallback((given: MIDIAccess) => {
    for (const input of given.inputs.values())
      input.onmidimessage = ({ data }) => data && readMessage(data, latest.current);
    const count = given.inputs.size;
    setState(
      count === 0
        ? "No MIDI keyboard is connected: plug one in."
        : `${count} MIDI ${count === 1 ? "input" : "inputs"} connected.`,
    );
  }, []);

  const connect = async () => {
    try {
      access.current = await navigator.requestMIDIAccess();
      access.current.onstatechange = () => access.current && listen(access.current);
      listen(access.current);
    } catch {
      setState("The browser blocks MIDI: allow it for this page.");
    }
  };

  useEffect(() => {
    return () => {
      if (!access.current) return;
      access.current.onstatechange = null;
      for (const input of access.current.inputs.values()) input.onmidimessage = null;
    };
  }, []);
  return { connect: "requestMIDIAccess" in navigator ? () => void connect() : null, state };
}
