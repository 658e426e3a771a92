/** Inputs of an entry that stand for several fields or for a curve of results. */

interface InputGroup {
  label: string;
  /** the field to go to, the first of the group; null for results */
  field: string | null;
}

/** By the path in an entry's `inputs`; every path that is neither a field nor a result's id is listed here. */
export const INPUT_GROUPS: Readonly<Record<string, InputGroup>> = {
  "topLoad.elements": { label: "Bodies of the top load", field: "topLoad.elements.0.outerDiameter" },
  "topLoad.breakoutPoint": { label: "Breakout point", field: "topLoad.breakoutPoint.length" },
  "tank.unit": { label: "Unit of the bank", field: "tank.unit.capacitance" },
  tuningAim: { label: "Tuning aim", field: "tuningAim.kind" },
  spark: { label: "Spark load", field: "spark.length" },
  "drive.supply": { label: "Supply", field: "drive.supply.arrangement" },
  "drive.commutation": { label: "Commutation", field: "drive.commutation.mode" },
  "drive.switch.thermal": { label: "Thermal impedance", field: "drive.switch.thermal.0.resistance" },
  "drive.currentTransformer.turns": {
    label: "Turns of the current transformers",
    field: "drive.currentTransformer.turns.0",
  },
  "secondary.profile": { label: "Voltage and current along the winding", field: null },
  "burst.waveform.primaryCurrent": { label: "Primary current through the burst", field: null },
};
