import { useEffect, useRef } from "react";
import { ROLL_HEIGHT, ROLL_WIDTH } from "../../calc/music/noteRoll";
import { playhead } from "./playhead";
import styles from "./Score.module.css";

/** Draws all pixels at once and tints them with the text colour. */
function draw(canvas: HTMLCanvasElement, roll: Uint8Array): void {
  const context = canvas.getContext("2d");
  if (!context) return;
  const image = context.createImageData(ROLL_WIDTH, ROLL_HEIGHT);
  for (let pixel = 0; pixel < roll.length; pixel++) image.data[4 * pixel + 3] = roll[pixel];
  context.globalCompositeOperation = "source-over";
  context.putImageData(image, 0, 0);
  context.globalCompositeOperation = "source-in";
  context.fillStyle = getComputedStyle(canvas).color;
  context.fillRect(0, 0, ROLL_WIDTH, ROLL_HEIGHT);
}

interface PianoRollProps {
  name: string;
  /** pixels from `noteRoll` */
  roll: Uint8Array;
  /** s */
  duration: number;
}

/** A coil's notes against time; a click moves the preview there. */
export function PianoRoll({ name, roll, duration }: PianoRollProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const drawAgain = () => canvas.current && draw(canvas.current, roll);
    drawAgain();
    const themeObserver = new MutationObserver(drawAgain);
    themeObserver.observe(document.documentElement, { attributeFilter: ["data-theme"] });
    return () => themeObserver.disconnect();
  }, [roll]);
  return (
    <canvas
      ref={canvas}
      className={styles.roll}
      width={ROLL_WIDTH}
      height={ROLL_HEIGHT}
      role="img"
      aria-label={`Piano roll of the ${name} coil`}
      onPointerDown={({ currentTarget, clientX }) => {
        const { left, width } = currentTarget.getBoundingClientRect();
        playhead.getState().seek?.((duration * (clientX - left)) / width);
      }}
    />
  );
}
