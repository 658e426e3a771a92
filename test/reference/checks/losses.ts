import { resistivity, skinDepth, wireMass, wireResistance } from "../../../src/calc/coil/conductor";
import { rowLoss } from "../../../src/calc/coil/proximity";
import { roundWireSkinEffect } from "../../../src/calc/coil/skinEffect";
import type { ReferenceCheck } from "../check";
import losses from "../losses.json";
import published from "../published.json";

const isolated: ReferenceCheck[] = losses.isolated_round_wire.flatMap((wire) => {
  const common = {
    group: "Skin effect",
    source: "losses.json: exact Bessel ratio, mpmath",
    unit: "",
    tolerance: 1e-9,
  };
  return [
    {
      ...common,
      id: `losses.skin.${wire.d_over_delta}`,
      name: `resistance ratio at d/δ = ${wire.d_over_delta}`,
      reference: wire.Rac_over_Rdc,
      compute: () => roundWireSkinEffect(wire.d_over_delta).resistanceRatio,
    },
    {
      ...common,
      id: `losses.internal.${wire.d_over_delta}`,
      name: `internal inductance ratio at d/δ = ${wire.d_over_delta}`,
      reference: wire.internal_L_ratio_to_dc,
      compute: () => roundWireSkinEffect(wire.d_over_delta).internalInductanceRatio,
    },
  ];
});

/** Stated tolerance of the file 3 %; the method claims 0.2 %, which is what is asked here. */
const solenoid: ReferenceCheck[] = losses.long_solenoid_proximity.map((row) => ({
  id: `losses.row.${row.d_over_p}.${row.d_over_delta}`,
  group: "Proximity effect",
  name: `long solenoid, d/p = ${row.d_over_p}, d/δ = ${row.d_over_delta}`,
  source: "losses.json: finite elements of an endless row with a long solenoid's field",
  reference: row.Rac_over_Rdc,
  unit: "",
  tolerance: 2e-3,
  compute: () => {
    const { current, alongField } = rowLoss(row.d_over_delta, row.d_over_p);
    return current + alongField;
  },
}));

const COPPER = 1e-6 / 58;

function entry(id: string): Record<string, number[] | number> {
  const found = (published as { id: string; value: unknown }[]).find((one) => one.id === id);
  return found?.value as Record<string, number[] | number>;
}

const awg: ReferenceCheck[] = Object.entries(entry("W-awg")).flatMap(([gauge, figures]) => {
  const [diameter, , ohmPerKilometre, massPerKilometre] = figures as [number, number, number, number];
  const common = { group: "Wire", source: "ASTM B258 diameters, IEC 60028 resistivity (published.json)" };
  return [
    {
      ...common,
      id: `losses.awg.${gauge}`,
      name: `resistance of 1 km AWG ${gauge}`,
      reference: ohmPerKilometre,
      unit: "Ω",
      tolerance: 2e-4, // the table's diameters carry four to five figures
      compute: () => wireResistance(1000, diameter / 1000, resistivity("copper", 293.15)),
    },
    {
      ...common,
      id: `losses.awg-mass.${gauge}`,
      name: `mass of 1 km AWG ${gauge}`,
      reference: massPerKilometre,
      unit: "kg",
      tolerance: 2e-4,
      compute: () => wireMass(1000, diameter / 1000, "copper"),
    },
  ];
});

/** The standard's nominal figures take 58.5 m/(Ω·mm²) for drawn wire; with that resistivity they agree. */
const iec: ReferenceCheck[] = Object.entries(entry("W-iec60317")).map(([diameter, figures]) => ({
  id: `losses.iec60317.${diameter}`,
  group: "Wire",
  name: `resistance of 1 m of ${diameter} mm wire`,
  source: "IEC 60317-0-1 nominal resistance at 58.5 MS/m (figure from memory, published.json)",
  reference: (figures as number[])[4]!,
  unit: "Ω",
  tolerance: 1e-4,
  compute: () => wireResistance(1, Number(diameter) / 1000, 1e-6 / 58.5),
}));

const depths: ReferenceCheck[] = (
  [
    [50e3, 0.295543e-3],
    [100e3, 0.208981e-3],
    [300e3, 0.120655e-3],
    [1e6, 0.0660855e-3],
  ] as const
).map(([frequency, depth]) => ({
  id: `losses.depth.${frequency}`,
  group: "Skin effect",
  name: `skin depth of copper at ${frequency / 1000} kHz`,
  source: "published.json P-skin, δ = √(ρ/πfμ₀)",
  reference: depth,
  unit: "m",
  tolerance: 1e-5,
  compute: () => skinDepth(COPPER, frequency),
}));

const straight: ReferenceCheck[] = Object.entries(entry("P-rac")).map(([key, value]) => {
  const [diameter, frequency] = key.split("@") as [string, string];
  const hertz = Number.parseFloat(frequency) * (frequency.endsWith("M") ? 1e6 : 1e3);
  return {
    id: `losses.straight.${key}`,
    group: "Skin effect",
    name: `straight copper wire, ${diameter} mm at ${frequency}Hz`,
    source: "NBS Circular 74 skin-effect factors; recomputed (published.json P-rac)",
    reference: value as number,
    unit: "",
    tolerance: 1e-5,
    compute: () => roundWireSkinEffect(Number(diameter) / 1000 / skinDepth(COPPER, hertz)).resistanceRatio,
  };
});

export const LOSS_CHECKS: ReferenceCheck[] = [
  ...isolated,
  ...solenoid,
  ...awg,
  ...iec,
  ...depths,
  ...straight,
];
