import { resistivity, skinDepth, wireMass, wireResistance } from "../../../src/calc/coil/conductor";
import { rowLoss } from "../../../src/calc/coil/proximity";
import { roundWireSkinEffect } from "../../../src/calc/coil/skinEffect";
import { windingAcResistance } from "../../../src/calc/coil/windingLoss";
import { MAGNETIC_CONSTANT } from "../../../src/calc/constants";
import type { ReferenceCheck } from "../check";
import losses from "../losses.json";
import { publishedValue } from "./publishedValue";

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

const awg: ReferenceCheck[] = Object.entries(publishedValue("W-awg")).flatMap(([gauge, figures]) => {
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
const iec: ReferenceCheck[] = Object.entries(publishedValue("W-iec60317")).map(([diameter, figures]) => ({
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

const straight: ReferenceCheck[] = Object.entries(publishedValue("P-rac")).map(([key, value]) => {
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

/**
 * Where the table holds for the model: its skin depth is far below the wire's size, its current uniform.
 * Both agree for wires up to half the pitch and coils at least as long as wide. With thicker wires the
 * model lies above the table (by 1/20 at 0.6, 1/4 at 0.9 for long coils, more for short ones): it lets the
 * coil's radial field through the gaps without the turns' reaction on that field, which counts where
 * δ ≪ wire. A real secondary has d/δ of 2 to 3, where the radial part is 2–5 % of the whole.
 */
const LENGTHS = [0, 0.2, 0.4, 0.6, 0.8, 1, 2, 4, 6, 8, 10];
const measured: ReferenceCheck[] = ["0.5", "0.4", "0.3", "0.2", "0.1"].flatMap((fill) =>
  LENGTHS.map((length, column) => ({
    length,
    phi: (publishedValue("R-medhurst-phi")[fill] as number[])[column]!,
  }))
    .filter(({ length }) => length >= 1)
    .map(({ length, phi }) => ({
      id: `losses.medhurst.${fill}.${length}`,
      group: "Proximity effect",
      name: `coil of length/diameter ${length}, wire/pitch ${fill}, thin skin, over the straight wire`,
      source: "Medhurst, Wireless Engineer 24 (1947), measured, table VIII: good to a few per cent",
      reference: phi,
      unit: "",
      tolerance: 0.03,
      compute: () => thickWireRatio(Number(fill), length),
    })),
);

function thickWireRatio(fill: number, lengthOverDiameter: number): number {
  const [turns, frequency, diameterOverDepth] = [400, 1e6, 60];
  const pitch = (2 * lengthOverDiameter) / turns;
  const diameter = pitch * fill;
  const ohmMetres = Math.PI * frequency * MAGNETIC_CONSTANT * (diameter / diameterOverDepth) ** 2;
  const winding = { turns, pitch, radius: 1, conductorRadius: diameter / 2 };
  const loss = windingAcResistance(winding, new Float64Array(100).fill(1), frequency, ohmMetres);
  return (
    loss.resistance / loss.directCurrentResistance / roundWireSkinEffect(diameterOverDepth).resistanceRatio
  );
}

export const LOSS_CHECKS: ReferenceCheck[] = [
  ...isolated,
  ...solenoid,
  ...measured,
  ...awg,
  ...iec,
  ...depths,
  ...straight,
];
