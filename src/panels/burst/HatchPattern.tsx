import type { Hatch } from "./energyParts";

const LINES: Record<Hatch, string | null> = {
  solid: null,
  rising: "M-1 6L6 -1M0 11L11 0",
  crossed: "M0 5H5M5 0V5",
  dotted: "M1 2.5H3",
  open: null,
};
const SIZE: Partial<Record<Hatch, number>> = { rising: 5, crossed: 5, dotted: 5 };

/** The fill of a part: drawn as on paper, so that parts are told apart without colour. */
export function HatchPattern({ id, colour, hatch }: { id: string; colour: string; hatch: Hatch }) {
  const lines = LINES[hatch];
  const size = SIZE[hatch];
  if (!lines) return null;
  return (
    <pattern id={id} width={size} height={size} patternUnits="userSpaceOnUse">
      <path d={lines} stroke={`var(${colour})`} strokeWidth={1.2} fill="none" />
    </pattern>
  );
}

/** What an element is filled with. */
export function hatchFill(id: string, colour: string, hatch: Hatch): string {
  if (hatch === "solid") return `var(${colour})`;
  return hatch === "open" ? "none" : `url(#${id})`;
}
