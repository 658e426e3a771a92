import { textCell } from "../csv";
import type { Gate } from "./gate";
import type { Coil } from "./lane";

/** The gates of a show: the right one is absent where one coil plays. */
export type Gates = { left?: Gate; right?: Gate };

export interface Pulse {
  coil: Coil;
  /** ns */
  start: number;
  /** ns */
  onTime: number;
}

/** All pulses of both coils in order of time; at the same time left comes first. */
export function pulsesInOrder(gates: Gates): Pulse[] {
  const of = (coil: Coil, gate: Gate | undefined): Pulse[] =>
    gate ? gate.starts.map((start, index) => ({ coil, start, onTime: gate.onTimes[index] })) : [];
  return [...of("left", gates.left), ...of("right", gates.right)].sort((a, b) => a.start - b.start);
}

/** Whole nanoseconds as seconds with nine decimals, exactly. */
function seconds(nanoseconds: number): string {
  const whole = Math.floor(nanoseconds / 1e9);
  return `${whole}.${String(nanoseconds - whole * 1e9).padStart(9, "0")}`;
}

/** The gate schedule as CSV: header `time,coil,onTime`, seconds with nine decimals, in order of time. */
export function scheduleCsv(gates: Gates): string {
  const rows = pulsesInOrder(gates).map(
    ({ coil, start, onTime }) => `${seconds(start)},${textCell(coil)},${seconds(onTime)}`,
  );
  return `${["time,coil,onTime", ...rows].join("\n")}\n`;
}
