import { MAGNETIC_CONSTANT } from "../../../src/calc/constants";
import { ringMutualInductance, ringSelfInductance, SURFACE_CURRENT } from "../../../src/calc/field/loops";
import { parallelAxisMutualInductance } from "../../../src/calc/field/parallelAxisLoops";
import type { ReferenceCheck } from "../check";
import { currentSheetInductance } from "../currentSheet";
import loops from "../loops.json";
import solenoids from "../solenoids.json";
import { windingInductance } from "../windingInductance";
import { publishedValue } from "./publishedValue";

const LOOPS = "loops.json: mpmath, 60 digits, cross-checked by quadrature";

const coaxial: ReferenceCheck[] = loops.coaxial.map((loop) => ({
  id: `loops.coaxial.${loop.name}`,
  group: "Coaxial circles",
  name: loop.name,
  source: LOOPS,
  reference: loop.value_H,
  unit: "H",
  tolerance: 1e-10,
  compute: () => ringMutualInductance(loop.r1, loop.r2, loop.dz),
}));

const parallel: ReferenceCheck[] = loops.parallel_axis.map((loop) => ({
  id: `loops.parallel.${loop.name}`,
  group: "Circles with parallel axes",
  name: loop.name,
  source: LOOPS,
  reference: loop.value_H,
  unit: "H",
  tolerance: 1e-10,
  compute: () => parallelAxisMutualInductance(loop.r1, loop.r2, loop.axis_offset, loop.dz),
}));

const SHEET = "solenoids.json: Lorenz's closed form in mpmath, against a double integral";

const nagaoka = (diameterOverLength: number) => {
  const radius = diameterOverLength / 2;
  return currentSheetInductance(radius, 1, 1) / (MAGNETIC_CONSTANT * Math.PI * radius * radius);
};

const sheets: ReferenceCheck[] = [
  ...solenoids.nagaoka.map((entry) => ({
    id: `solenoids.nagaoka.${entry.diameter_over_length}`,
    group: "Current sheets",
    name: `Nagaoka coefficient at diameter/length ${entry.diameter_over_length}`,
    source: SHEET,
    reference: entry.K_nagaoka,
    unit: "",
    tolerance: 1e-9,
    compute: () => nagaoka(entry.diameter_over_length),
  })),
  ...solenoids.current_sheet.map((sheet) => ({
    id: `solenoids.sheet.${sheet.diameter}.${sheet.length}.${sheet.N}`,
    group: "Current sheets",
    name: `current sheet ${sheet.diameter} m × ${sheet.length} m, ${sheet.N} turns`,
    source: SHEET,
    reference: sheet.L,
    unit: "H",
    tolerance: 1e-9,
    compute: () => currentSheetInductance(sheet.diameter / 2, sheet.length, sheet.N),
  })),
];

const windings: ReferenceCheck[] = solenoids.round_wire.flatMap(({ name, inputs, ...value }) => {
  const winding = {
    turns: inputs.N,
    pitch: inputs.pitch,
    radius: inputs.R,
    conductorRadius: inputs.wire_bare_dia / 2,
  };
  const common = {
    group: "Windings of round wire",
    source: "solenoids.json: sum over all turn pairs, SciPy and mpmath",
    unit: "H",
    tolerance: 1e-6,
  };
  return [
    {
      ...common,
      id: `solenoids.winding.${name}.uniform`,
      name: `coil ${name}, uniform current in the wire`,
      reference: value.L_turnsum_uniform_current,
      compute: () => windingInductance(winding),
    },
    {
      ...common,
      id: `solenoids.winding.${name}.surface`,
      name: `coil ${name}, current on the wire's surface`,
      reference: value.L_turnsum_surface_current,
      compute: () => windingInductance(winding, { currentDistribution: SURFACE_CURRENT }),
    },
  ];
});

const publishedCircles: ReferenceCheck[] = ["M-coaxial-rosa-grover", "M-coaxial-more"].flatMap((id) =>
  Object.entries(publishedValue(id)).map(([name, value]) => {
    const [a, b, d] = (name.match(/[\d.]+/g) ?? []).map((figure) => Number(figure) / 100);
    return {
      id: `published.${id}.${name}`,
      group: "Coaxial circles",
      name,
      source:
        "Rosa & Grover, Bull. Bur. Stds 8 (1912), formula; figures recomputed from memory (published.json)",
      reference: (value as number) * 1e-9,
      unit: "H",
      tolerance: 1e-6,
      compute: () => ringMutualInductance(a!, b!, d!),
    };
  }),
);

const printedNagaoka: ReferenceCheck[] = Object.entries(
  publishedValue("L-nagaoka")["table (4 figures, as printed)"] as Record<string, number>,
).map(([ratio, value]) => ({
  id: `published.nagaoka.${ratio}`,
  group: "Current sheets",
  name: `printed Nagaoka coefficient at diameter/length ${ratio}`,
  source: "Nagaoka, J. Coll. Sci. Tokyo 27 (1909) art. 6; four printed figures, from memory, recomputed",
  reference: value,
  unit: "",
  tolerance: 0.6e-4,
  absolute: true,
  compute: () => nagaoka(Number(ratio)),
}));

const rosaWorked: ReferenceCheck[] = (
  [
    ["a", 0.1, 0.002, 10, 0.001],
    ["b", 0.1, 0.001, 100, 0.0008],
    ["c", 0.16, 0.00055, 1000, 0.0005],
  ] as const
).map(([key, diameter, pitch, turns, wire]) => ({
  id: `published.rosa.${key}`,
  group: "Windings of round wire",
  name: `Rosa's worked correction, ${turns} turns`,
  source: "Rosa, Bull. Bur. Stds 2 (1906) 161, corrections A and B; worked in published.json; good to 1e-4",
  reference: (publishedValue("L-rosa-worked")[key] as Record<string, number>).corrected_uH! * 1e-6,
  unit: "H",
  tolerance: 1e-4,
  compute: () => windingInductance({ turns, pitch, radius: diameter / 2, conductorRadius: wire / 2 }),
}));

/** Rosa's B is what the turn sum lacks against the sheet when A is taken out: independent of the wire. */
const rosaB: ReferenceCheck[] = ["2", "5", "10", "20", "50", "100"].map((key) => ({
  id: `published.rosa-b.${key}`,
  group: "Windings of round wire",
  name: `Rosa's correction B for ${key} turns`,
  source: "Rosa 1907, table VIII; Grover 1946, table 39: four places, for turns close together",
  reference: publishedValue("L-rosa-B")[key] as number,
  unit: "",
  tolerance: 1.5e-4,
  absolute: true,
  compute: () => {
    const turns = Number(key);
    const [radius, pitch, wire] = [100, 0.01, 0.004];
    const sheet = currentSheetInductance(radius, turns * pitch, turns);
    const sum = windingInductance({ turns, pitch, radius, conductorRadius: wire / 2 });
    const selfTerm = 1.25 - Math.log((2 * pitch) / wire);
    return (sheet - sum) / (MAGNETIC_CONSTANT * radius * turns) - selfTerm;
  },
}));

/** Wheeler claims 1 % for length > 0.8 radius (author's range, from memory). */
const wheeler: ReferenceCheck[] = Object.entries(publishedValue("L-wheeler-solenoid"))
  .filter(([ratio]) => Number(ratio) >= 0.8)
  .map(([ratio, figures]) => ({
    id: `published.wheeler.${ratio}`,
    group: "Current sheets",
    name: `Wheeler's formula at length/radius ${ratio}`,
    source: "Wheeler, Proc. IRE 16 (1928) 1398: within 1 % for length > 0.8 radius",
    reference: (figures as number[])[0]! * 1e-6,
    unit: "H",
    tolerance: 0.01,
    compute: () => currentSheetInductance(0.0254, 0.0254 * Number(ratio), 100),
  }));

const rings: ReferenceCheck[] = [
  { name: "uniform current", reference: 620.1016e-9, currentDistribution: 0.25 },
  { name: "surface current", reference: 588.6857e-9, currentDistribution: 0 },
].map(({ name, reference, currentDistribution }) => ({
  id: `published.ring.${name}`,
  group: "One ring",
  name: `ring of 100 mm radius, wire radius 1 mm, ${name}`,
  source: "Maxwell; Grover 1946, ch. 16 (published.json, recomputed)",
  reference,
  unit: "H",
  tolerance: 1e-6,
  compute: () => ringSelfInductance(0.1, 0.001, currentDistribution),
}));

export const MAGNETIC_LOOP_CHECKS: ReferenceCheck[] = [
  ...coaxial,
  ...publishedCircles,
  ...parallel,
  ...rings,
  ...sheets,
  ...printedNagaoka,
  ...wheeler,
  ...windings,
  ...rosaWorked,
  ...rosaB,
];
