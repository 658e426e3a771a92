/** The layout of the energy diagram's bands, in px, without overlapping labels. */

interface FlowPart {
  id: string;
  /** J, above zero */
  energy: number;
}

export interface FlowBand extends FlowPart {
  /** of the energy supplied */
  share: number;
  /** top of the band at the supply, and at its label */
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

/** No band is drawn thicker than the supply, even if the balance has a large error. */
function drawnShare(energy: number, supplied: number): number {
  return Math.min(1, energy / supplied);
}

/**
 * Bands as thick as their share: adjacent at the supply, and far enough apart for their labels at the other end.
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

/** The outline of a band between two x values. */
export function bandPath({ left, right, thickness }: FlowBand, from: number, to: number): string {
  const middle = (from + to) / 2;
  return (
    `M${from} ${left}C${middle} ${left} ${middle} ${right} ${to} ${right}` +
    `V${right + thickness}C${middle} ${right + thickness} ${middle} ${left + thickness} ${from} ${left + thickness}Z`
  );
}
