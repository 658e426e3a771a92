/** Where the bands of the energy picture lie, in px; no two labels share a place. */

interface FlowPart {
  id: string;
  /** J, above zero */
  energy: number;
}

export interface FlowBand extends FlowPart {
  /** of the energy supplied */
  share: number;
  /** top of the band where it leaves the supply, and where it arrives */
  left: number;
  right: number;
  thickness: number;
  /** the place of its label */
  slotTop: number;
  slotHeight: number;
}

export interface EnergyFlow {
  height: number;
  supplyTop: number;
  supplyHeight: number;
  bands: FlowBand[];
}

const SUPPLY_HEIGHT = 150;
const LABEL_HEIGHT = 20;
const GAP = 5;

/** No band is drawn thicker than the supply, whatever a sum that does not hold may say. */
function drawnShare(energy: number, supplied: number): number {
  return Math.min(1, energy / supplied);
}

/**
 * Bands as thick as their share, together where they leave the supply, far enough apart for their labels
 * where they arrive.
 * @param supplied J, above zero
 */
export function energyFlow(supplied: number, parts: readonly FlowPart[]): EnergyFlow {
  const slots = parts.map(({ energy }) =>
    Math.max(LABEL_HEIGHT, drawnShare(energy, supplied) * SUPPLY_HEIGHT),
  );
  const places = slots.reduce((sum, slot) => sum + slot + GAP, -GAP);
  const height = Math.max(SUPPLY_HEIGHT, places);
  const supplyTop = (height - SUPPLY_HEIGHT) / 2;
  let [left, slotTop] = [supplyTop, (height - places) / 2];
  const bands = parts.map((part, index): FlowBand => {
    const share = part.energy / supplied;
    const thickness = drawnShare(part.energy, supplied) * SUPPLY_HEIGHT;
    const slotHeight = slots[index];
    const right = slotTop + (slotHeight - thickness) / 2;
    const band = { ...part, share, left, right, thickness, slotTop, slotHeight };
    left += thickness;
    slotTop += slotHeight + GAP;
    return band;
  });
  return { height, supplyTop, supplyHeight: SUPPLY_HEIGHT, bands };
}

/** The outline of a band between two abscissae. */
export function bandPath({ left, right, thickness }: FlowBand, from: number, to: number): string {
  const middle = (from + to) / 2;
  return (
    `M${from} ${left}C${middle} ${left} ${middle} ${right} ${to} ${right}` +
    `V${right + thickness}C${middle} ${right + thickness} ${middle} ${left + thickness} ${from} ${left + thickness}Z`
  );
}
