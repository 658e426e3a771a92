import { useEffect, useRef } from "react";
import type { NoteOutcome } from "../../calc/music/gateSchedule";
import type { PlayedCoil } from "../../evaluation/playedCoil";
import { playhead } from "./playhead";
import styles from "./Score.module.css";

const WIDTH = 900;
const ROLL = 150;
const SCALE = 2;

type Pen = CanvasRenderingContext2D;

/** Played notes are filled, shortened ones half filled, dropped ones an outline crossed through. */
function drawNote(pen: Pen, note: NoteOutcome, x: number, y: number, width: number, height: number): void {
  if (note.fate === "dropped") {
    pen.strokeRect(x, y, width, height);
    pen.beginPath();
    pen.moveTo(x, y + height);
    pen.lineTo(x + width, y);
    pen.stroke();
    return;
  }
  const filled = note.fate === "played" ? height : height / 2;
  if (filled < height) pen.strokeRect(x, y, width, height);
  pen.fillRect(x, y + height - filled, width, filled);
}

function drawRoll(pen: Pen, notes: readonly NoteOutcome[], duration: number): void {
  const keys = notes.map((note) => note.key);
  const lowest = keys.reduce((least, key) => Math.min(least, key), 127) - 1;
  const highest = keys.reduce((most, key) => Math.max(most, key), 0) + 1;
  const row = ROLL / (highest - lowest + 1);
  for (const note of notes) {
    const x = (note.start / duration) * WIDTH;
    const width = Math.max(1.5, ((note.end - note.start) / duration) * WIDTH - 0.5);
    drawNote(pen, note, x, (highest - note.key) * row, width, Math.min(10, Math.max(2, row - 1)));
  }
}

interface PianoRollProps {
  name: string;
  played: PlayedCoil;
  duration: number;
}

/** Notes of a coil against time; pressed, the preview goes on from there. */
export function PianoRoll({ name, played, duration }: PianoRollProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const pen = canvas.current?.getContext("2d");
    if (!canvas.current || !pen) return;
    const colour = getComputedStyle(canvas.current).color;
    pen.setTransform(SCALE, 0, 0, SCALE, 0, 0);
    pen.clearRect(0, 0, WIDTH, ROLL);
    pen.fillStyle = colour;
    pen.strokeStyle = colour;
    drawRoll(pen, played.schedule.notes, duration);
  });
  return (
    <canvas
      ref={canvas}
      className={styles.roll}
      width={WIDTH * SCALE}
      height={ROLL * SCALE}
      role="img"
      aria-label={`Piano roll of the ${name} coil`}
      onPointerDown={({ currentTarget, clientX }) => {
        const { left, width } = currentTarget.getBoundingClientRect();
        playhead.getState().seek?.((duration * (clientX - left)) / width);
      }}
    />
  );
}
