/** Results of a burst that are series: by sample, half cycle, cycle or gate pulse. */
import type { ResultEntry } from "../register/entry";

/** The part that differs from entry to entry. */
export type BurstEntry = Omit<ResultEntry, "inputs" | "source" | "validity" | "accuracy"> &
  Partial<Pick<ResultEntry, "inputs" | "accuracy">>;

export const BURST_SERIES: readonly BurstEntry[] = [
  {
    id: "frequencyByCycle.*.time",
    label: "End of a cycle",
    symbol: "t",
    dimension: "time",
    words: "When this cycle of the primary current ends.",
    formula: "t",
  },
  {
    id: "frequencyByCycle.*.frequency",
    label: "Frequency of a cycle",
    symbol: "f_k",
    dimension: "frequency",
    words: "Reciprocal of the duration of two consecutive half cycles.",
    formula: "f_k = 1/T_k",
  },
  {
    id: "gates.*.from",
    label: "Pair turns on",
    symbol: "t_on",
    dimension: "time",
    words: "When a pair of switches is turned on.",
    formula: "comparator's zero + delay + dead time",
  },
  {
    id: "gates.*.to",
    label: "Pair turns off",
    symbol: "t_off",
    dimension: "time",
    words: "When that pair is turned off.",
    formula: "comparator's zero + delay",
  },
  {
    id: "gates.*.polarity",
    label: "Pair",
    symbol: "±",
    dimension: "count",
    words: "1 for the pair that drives the current up, −1 for the other.",
    formula: "±1",
  },
  {
    id: "waveform.time.*",
    label: "Time",
    symbol: "t",
    dimension: "time",
    words: "Samples of the burst, thinned for plotting.",
    formula: "t",
  },
  {
    id: "waveform.primaryCurrent.*",
    label: "Primary current",
    symbol: "i",
    dimension: "current",
    words: "Current in the primary at the sample.",
    formula: "L·di/dt + Σ M_n·di_n/dt = v_bridge − R·i − v_C",
  },
  {
    id: "waveform.topVoltage.*",
    label: "Top voltage",
    symbol: "v_top",
    dimension: "voltage",
    words: "Voltage of the top load at the sample.",
    formula: "v_top = Σ v_n",
  },
  {
    id: "waveform.bankVoltage.*",
    label: "Bank voltage",
    symbol: "v_C",
    dimension: "voltage",
    words: "Voltage across the bank at the sample.",
    formula: "C·dv_C/dt = i",
  },
  {
    id: "envelope.time.*",
    label: "Time of a half cycle's peak",
    symbol: "t_k",
    dimension: "time",
    words: "When the primary current of this half cycle is largest.",
    formula: "t_k",
  },
  {
    id: "envelope.primaryCurrent.*",
    label: "Envelope of the primary current",
    symbol: "î_k",
    dimension: "current",
    words: "Largest magnitude in the half cycle.",
    formula: "î_k = max |i|",
  },
  {
    id: "envelope.topVoltage.*",
    label: "Envelope of the top voltage",
    symbol: "v̂_k",
    dimension: "voltage",
    words: "Largest magnitude in the half cycle.",
    formula: "v̂_k = max |v_top|",
  },
];
