/**
 * Notes of a coil as a picture of pixels, keys against time: bounded by its pixels, however many notes there are.
 * Played notes are filled, shortened ones half filled, dropped ones an outline crossed through.
 */
import type { NoteOutcome } from "./gateSchedule";

export const ROLL_WIDTH = 1800;
export const ROLL_HEIGHT = 300;

/** px */
const LINE = 2;
const LEAST_WIDTH = 3;
const [LEAST_HEIGHT, MOST_HEIGHT] = [4, 20];
const INK = 255;

interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

function fill(pixels: Uint8Array, { left, top, right, bottom }: Box): void {
  const [from, to] = [Math.max(0, left), Math.min(ROLL_WIDTH, right)];
  if (to <= from) return;
  for (let y = Math.max(0, top); y < Math.min(ROLL_HEIGHT, bottom); y++)
    pixels.fill(INK, y * ROLL_WIDTH + from, y * ROLL_WIDTH + to);
}

function outline(pixels: Uint8Array, box: Box): void {
  fill(pixels, { ...box, bottom: box.top + LINE });
  fill(pixels, { ...box, top: box.bottom - LINE });
  fill(pixels, { ...box, right: box.left + LINE });
  fill(pixels, { ...box, left: box.right - LINE });
}

/** From the lower left to the upper right. */
function cross(pixels: Uint8Array, { left, top, right, bottom }: Box): void {
  const slope = (right - left) / (bottom - top);
  for (let y = top; y < bottom; y++) {
    const at = Math.round(left + (bottom - 1 - y) * slope);
    fill(pixels, {
      left: at,
      top: y,
      right: Math.min(right, at + Math.max(LINE, Math.ceil(slope))),
      bottom: y + 1,
    });
  }
}

function draw(pixels: Uint8Array, { fate }: NoteOutcome, box: Box): void {
  if (fate === "played") {
    fill(pixels, box);
    return;
  }
  outline(pixels, box);
  if (fate === "dropped") cross(pixels, box);
  else fill(pixels, { ...box, top: (box.top + box.bottom) >> 1 });
}

/**
 * The picture, row by row from the highest key down, a byte a pixel: 0 or 255.
 * @param duration s, above 0
 */
export function noteRoll(notes: readonly NoteOutcome[], duration: number): Uint8Array<ArrayBuffer> {
  const pixels = new Uint8Array(ROLL_WIDTH * ROLL_HEIGHT);
  const lowest = notes.reduce((least, { key }) => Math.min(least, key), 127) - 1;
  const highest = notes.reduce((most, { key }) => Math.max(most, key), 0) + 1;
  const row = ROLL_HEIGHT / (highest - lowest + 1);
  const height = Math.round(Math.min(MOST_HEIGHT, Math.max(LEAST_HEIGHT, row - 2)));
  const x = (time: number) => Math.round((time / duration) * ROLL_WIDTH);
  for (const note of notes) {
    const left = Math.min(x(note.start), ROLL_WIDTH - LEAST_WIDTH);
    const top = Math.round((highest - note.key) * row);
    const right = Math.max(left + LEAST_WIDTH, x(note.end) - 1);
    draw(pixels, note, { left, top, right, bottom: top + height });
  }
  return pixels;
}
