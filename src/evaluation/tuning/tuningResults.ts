/** Results of the tuning, in SI units. */
import type { TuningPoint } from "../../calc/circuit/tuningCurve";

export interface TuningResult {
  /** turns; null if the aim cannot be reached or is not known yet */
  suggestedTap: number | null;
  /** the range of taps due to the winding's tolerance */
  suggestedTapBand: { low: number; high: number } | null;
  /** Hz; null if bursts have not been swept for the aim "most energy" */
  targetResonance: number | null;
  /** relative difference of the primary's resonance from the target; null if the tap is not on the conductor */
  detuning: number | null;
  tuned: boolean;
  curve: TuningPoint[];
}
