import { textCell } from "../csv";
import type { GateToRead } from "./gate";
import type { Coil } from "./lane";

/** The gates of a show: the right one is absent if only one coil plays. */
export type Gates = { left?: GateToRead; right?: GateToRead };

const NO_PULSES: GateToRead = { starts: [], onTimes: [] };

/** The coil whose pulse comes next, from these indices in both gates on; at equal times left comes first. */
function nextCoil({ left, right }: Gates, place: Record<Coil, number>): Coil | null {
  const ofLeft = left && place.left < left.starts.length ? left.starts[place.left] : null;
  const ofRight = right && place.right < right.starts.length ? right.starts[place.right] : null;
  if (ofLeft === null) return ofRight === null ? null : "right";
  return ofRight === null || ofLeft <= ofRight ? "left" : "right";
}

const [COMMA, POINT, NEW_LINE, ZERO] = [",", ".", "\n", "0"].map((sign) => sign.charCodeAt(0));
const HEADER = "time,coil,onTime\n";
/** Rows of a piece: few enough for progress reports, many enough to be efficient. */
const PIECE = 8192;
/** Two times of at most seven digits before the point and nine after it, a coil's name, commas and a new line. */
const LONGEST_ROW = 64;

/** ASCII under construction. */
class Text {
  readonly #bytes: Uint8Array<ArrayBuffer>;
  #length = 0;

  constructor(capacity: number) {
    this.#bytes = new Uint8Array(capacity);
  }

  sign(code: number): void {
    this.#bytes[this.#length++] = code;
  }

  text(text: string): void {
    for (let index = 0; index < text.length; index++) this.sign(text.charCodeAt(index));
  }

  /** A whole number with at least so many digits, padded with zeros. */
  digits(value: number, least: number): void {
    let count = least;
    while (value >= 10 ** count) count++;
    let rest = value;
    for (let place = this.#length + count - 1; place >= this.#length; place--) {
      const tenth = Math.floor(rest / 10);
      this.#bytes[place] = ZERO + rest - 10 * tenth;
      rest = tenth;
    }
    this.#length += count;
  }

  /** Whole nanoseconds as seconds with nine decimals, exactly. */
  seconds(nanoseconds: number): void {
    const whole = Math.floor(nanoseconds / 1e9);
    this.digits(whole, 1);
    this.sign(POINT);
    this.digits(nanoseconds - whole * 1e9, 9);
  }

  get written(): Uint8Array<ArrayBuffer> {
    return this.#bytes.subarray(0, this.#length);
  }
}

/**
 * The gate schedule as CSV in ASCII, piece by piece: header `time,coil,onTime`, seconds with nine decimals, in order
 * of time.
 * @param onProgress called after each piece with the part that is done, 0 … 1
 */
export function scheduleCsvPieces(
  gates: Gates,
  onProgress?: (done: number) => void,
): Uint8Array<ArrayBuffer>[] {
  const place: Record<Coil, number> = { left: 0, right: 0 };
  const cells: Record<Coil, string> = { left: textCell("left"), right: textCell("right") };
  const all = (gates.left?.starts.length ?? 0) + (gates.right?.starts.length ?? 0);
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  let piece = new Text(HEADER.length + PIECE * LONGEST_ROW);
  piece.text(HEADER);
  for (let coil = nextCoil(gates, place); coil; coil = nextCoil(gates, place)) {
    const index = place[coil]++;
    const { starts, onTimes } = gates[coil] ?? NO_PULSES;
    piece.seconds(starts[index]);
    piece.sign(COMMA);
    piece.text(cells[coil]);
    piece.sign(COMMA);
    piece.seconds(onTimes[index]);
    piece.sign(NEW_LINE);
    const done = place.left + place.right;
    if (done % PIECE !== 0) continue;
    pieces.push(piece.written);
    piece = new Text(PIECE * LONGEST_ROW);
    onProgress?.(done / all);
  }
  return [...pieces, piece.written];
}

/** Characters per call: an engine may refuse more arguments than this. */
const ARGUMENTS = 8192;

function asciiText(bytes: Uint8Array): string {
  let text = "";
  for (let from = 0; from < bytes.length; from += ARGUMENTS)
    text += String.fromCharCode(...bytes.subarray(from, from + ARGUMENTS));
  return text;
}

/** The gate schedule as CSV in one text. */
export function scheduleCsv(gates: Gates): string {
  return scheduleCsvPieces(gates).map(asciiText).join("");
}
