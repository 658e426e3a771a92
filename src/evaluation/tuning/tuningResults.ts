/** What is computed of the tuning, in SI units. */
import type { TuningPoint } from "../../calc/circuit/tuningCurve";

export interface TuningResult {
  /** turns; null where the aim cannot be reached or is not known yet */
  suggestedTap: number | null;
  /** taps within which the winding's tolerance puts it */
  suggestedTapBand: { low: number; high: number } | null;
  /** Hz, what the primary is tuned to; null while bursts are not swept for the aim "most energy" */
  targetResonance: number | null;
  /** relative difference of the primary's resonance from the target; null where the tap is not on the conductor */
  detuning: number | null;
  tuned: boolean;
  curve: TuningPoint[];
}
