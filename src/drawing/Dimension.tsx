import styles from "./Drawing.module.css";

interface DimensionProps {
  /** px, ends of the measured length */
  from: { x: number; y: number };
  to: { x: number; y: number };
  /** px, from the measured ends to the dimension line */
  offset: number;
  text: string;
}

const OVERSHOOT = 4;
const GAP = 3;
const TICK = 4;

/** A dimension of an engineering drawing: extension lines, a line with oblique ticks, the figure on it. */
export function Dimension({ from, to, offset, text }: DimensionProps) {
  const upright = Math.abs(from.x - to.x) < Math.abs(from.y - to.y);
  const beyond = Math.sign(offset) * OVERSHOOT;
  const start = Math.sign(offset) * GAP;
  const line = upright
    ? { x1: to.x + offset, x2: to.x + offset, y1: from.y, y2: to.y }
    : { x1: from.x, x2: to.x, y1: to.y + offset, y2: to.y + offset };
  const extension = (end: { x: number; y: number }) =>
    upright
      ? `M${end.x + start} ${end.y}H${line.x1 + beyond}`
      : `M${end.x} ${end.y + start}V${line.y1 + beyond}`;
  const stroke = (x: number, y: number) => `M${x - TICK} ${y + TICK}l${2 * TICK} ${-2 * TICK}`;
  const middle = { x: (line.x1 + line.x2) / 2, y: (line.y1 + line.y2) / 2 };
  const turn = upright ? `rotate(-90 ${middle.x} ${middle.y})` : undefined;
  return (
    <g className={styles.dimension}>
      <path d={extension(from) + extension(to)} className={styles.extension} />
      <line {...line} />
      <path d={stroke(line.x1, line.y1) + stroke(line.x2, line.y2)} className={styles.tick} />
      <text x={middle.x} y={middle.y - 4} textAnchor="middle" transform={turn}>
        {text}
      </text>
    </g>
  );
}
