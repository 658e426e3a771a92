import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from "react";
import { workbench } from "../workbench/session/session";
import styles from "./Drawing.module.css";

interface HandleProps {
  /** px */
  x: number;
  y: number;
  label: string;
  value: number;
  minimum: number;
  maximum: number;
  valueText: string;
  /** name of the undo step */
  step: string;
  /** change of the value by an arrow key */
  keyStep: number;
  /** value under a point of the drawing, px */
  valueAt: (x: number, y: number) => number;
  onChange: (value: number) => void;
  children?: ReactNode;
}

const RADIUS = 13;

/** Steps of each key. */
const STEPS: Record<string, number> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 10,
  PageDown: -10,
};

function pointIn(event: PointerEvent<SVGGElement>): { x: number; y: number } {
  const svg = event.currentTarget.ownerSVGElement;
  const matrix = svg?.getScreenCTM()?.inverse();
  const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
  return { x: point.x, y: point.y };
}

/** A drag handle on the drawing, also moved by the arrow keys; one drag is one undo step. */
export function Handle(props: HandleProps) {
  const { x, y, label, value, minimum, maximum, valueText, step, keyStep, valueAt, onChange, children } =
    props;
  /** from the pointer to the handle while it is dragged */
  const drag = useRef<{ x: number; y: number } | null>(null);
  const within = (next: number): number => Math.min(Math.max(next, minimum), maximum);

  const valueAfterKey = ({ key, shiftKey }: KeyboardEvent): number | null => {
    if (key === "Home") return minimum;
    if (key === "End") return maximum;
    const steps = STEPS[key];
    return steps === undefined ? null : value + steps * keyStep * (shiftKey ? 10 : 1);
  };

  const begin = (event: PointerEvent<SVGGElement>) => {
    const at = pointIn(event);
    drag.current = { x: x - at.x, y: y - at.y };
    event.currentTarget.setPointerCapture(event.pointerId);
    workbench.begin(step);
  };
  const move = (event: PointerEvent<SVGGElement>) => {
    if (!drag.current) return;
    const at = pointIn(event);
    onChange(within(valueAt(at.x + drag.current.x, at.y + drag.current.y)));
  };
  const end = (finish: () => void) => {
    if (!drag.current) return;
    drag.current = null;
    finish();
  };
  const onKeyDown = (event: KeyboardEvent<SVGGElement>) => {
    if (event.key === "Escape") return end(workbench.cancel);
    const next = valueAfterKey(event);
    if (next === null) return;
    event.preventDefault();
    workbench.begin(step);
    onChange(within(next));
    workbench.commit(step);
  };

  return (
    <g
      className={styles.handle}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuenow={value}
      aria-valuemin={minimum}
      aria-valuemax={maximum}
      aria-valuetext={valueText}
      transform={`translate(${x} ${y})`}
      onPointerDown={begin}
      onPointerMove={move}
      onPointerUp={() => end(() => workbench.commit())}
      onPointerCancel={() => end(workbench.cancel)}
      onKeyDown={onKeyDown}
    >
      <circle className={styles.hitArea} r={RADIUS} />
      {children}
    </g>
  );
}
