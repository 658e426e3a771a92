/** What is computed of the losses, in SI units. */

/** One of the losses of a circuit. */
export interface LossPart {
  /** Ω */
  resistance: number;
  /** of the circuit's whole */
  share: number;
}

/** Where each circuit loses its energy, as computed; a measured Q does not change the parts. */
export interface LossesResult {
  /** referred to the largest current of the fundamental */
  secondary: {
    total: number;
    directCurrent: LossPart;
    skin: LossPart;
    proximity: LossPart;
    allowance: LossPart;
  };
  primary: {
    total: number;
    tube: LossPart;
    bank: LossPart;
    switches: LossPart;
    allowance: LossPart;
  };
}
