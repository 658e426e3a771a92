import { useEffect, useRef } from "react";
import { ROLL_HEIGHT, ROLL_WIDTH } from "../../calc/music/noteRoll";
import { playhead } from "./playhead";
import styles from "./Score.module.css";

/** Puts the pixels down in one go and inks them in. */
function draw(canvas: HTMLCanvasElement, roll: Uint8Array): void {
  const pen = canvas.getContext("2d");
  if (!pen) return;
  const image = pen.createImageData(ROLL_WIDTH, ROLL_HEIGHT);
  for (let pixel = 0; pixel < roll.length; pixel++) image.data[4 * pixel + 3] = roll[pixel];
  pen.globalCompositeOperation = "source-over";
  pen.putImageData(image, 0, 0);
  pen.globalCompositeOperation = "source-in";
  pen.fillStyle = getComputedStyle(canvas).color;
  pen.fillRect(0, 0, ROLL_WIDTH, ROLL_HEIGHT);
}

interface PianoRollProps {
  name: string;
  /** as `noteRoll` draws it */
  roll: Uint8Array;
  /** s */
  duration: number;
}

/** Notes of a coil against time; pressed, the preview goes on from there. */
export function PianoRoll({ name, roll, duration }: PianoRollProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const drawAgain = () => canvas.current && draw(canvas.current, roll);
    drawAgain();
    const inkChanges = new MutationObserver(drawAgain);
    inkChanges.observe(document.documentElement, { attributeFilter: ["data-theme"] });
    return () => inkChanges.disconnect();
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
