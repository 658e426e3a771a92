import { isolatedCapacitance } from "../../../src/calc/coil/topLoadBody";
import { ELECTRIC_CONSTANT } from "../../../src/calc/constants";
import {
  type Electrode,
  ringElectrode,
  sphereElectrode,
  surfaceField,
} from "../../../src/calc/field/electrode";
import { fillInfluence, type Mirrors } from "../../../src/calc/field/influence";
import { factorise, substitute } from "../../../src/calc/linear/elimination";
import capacitance from "../capacitance.json";
import type { ReferenceCheck } from "../check";
import { publishedValue } from "./publishedValue";

const NODES = 32;
const PLANE: Mirrors = { ceilingHeight: null };

function nodeCharges(electrode: Electrode, mirrors: Mirrors | null): Float64Array {
  const size = electrode.radius.length;
  const matrix = new Float64Array(size * size);
  fillInfluence(electrode, electrode, mirrors, matrix, size, 0, 0);
  factorise(matrix, size);
  const charges = new Float64Array(size).fill(1);
  substitute(matrix, size, size, charges, 1);
  return charges;
}

function total(charges: Float64Array): number {
  return charges.reduce((sum, charge) => sum + charge, 0);
}

/** Largest field by the parabola through the three highest nodes. */
function largestField(electrode: Electrode, charges: Float64Array): number {
  const field = Array.from(charges, (charge, node) =>
    surfaceField(electrode, node, charge, ELECTRIC_CONSTANT),
  );
  const count = field.length;
  const peak = field.indexOf(Math.max(...field));
  const [before, after] = [field[(peak + count - 1) % count], field[(peak + 1) % count]];
  return field[peak] - (after - before) ** 2 / (8 * (before - 2 * field[peak] + after));
}

const SERIES = "exact toroidal-harmonic series (mpmath): Smythe, Static and Dynamic Electricity (1950)";
const SPHERE = "image series 4πε₀a·sinh α·Σ 1/sinh nα: Maxwell, Treatise, vol. 1, ch. XI";

const tori: ReferenceCheck[] = capacitance.torus.flatMap(({ name, D, d, R, a, C_F, E_max_per_volt }) => [
  {
    id: `torus-capacitance-${name}`,
    group: "Capacitance",
    name: `Isolated torus ${name}`,
    source: SERIES,
    reference: C_F,
    unit: "F",
    tolerance: 1e-4,
    compute: () =>
      isolatedCapacitance([
        { shape: "toroid" as const, outerDiameter: D, tubeDiameter: d, centreHeight: 1 },
      ]) ?? Number.NaN,
  },
  {
    id: `torus-field-${name}`,
    group: "Capacitance",
    name: `Largest surface field of the isolated torus ${name}`,
    source: SERIES,
    reference: E_max_per_volt,
    unit: "1/m",
    tolerance: 5e-3,
    compute: () => {
      const electrode = ringElectrode(R, a, 0, NODES);
      return largestField(electrode, nodeCharges(electrode, null));
    },
  },
]);

/** A sphere that almost touches the plane asks for more nodes, as the mesh of a coil gives them. */
function sphereNodes(radius: number, centreHeight: number): number {
  return centreHeight < 1.1 * radius ? 2 * NODES : NODES;
}

const spheres: ReferenceCheck[] = capacitance.sphere_above_plane.map(({ radius, centre_height, C_F }) => ({
  id: `sphere-over-plane-${radius}-${centre_height}`,
  group: "Capacitance",
  name: `Sphere of ${radius} m radius, centre ${centre_height} m above a plane`,
  source: SPHERE,
  reference: C_F,
  unit: "F",
  tolerance: 1e-4,
  compute: () =>
    total(nodeCharges(sphereElectrode(radius, centre_height, sphereNodes(radius, centre_height)), PLANE)),
}));

const toriOverPlane: ReferenceCheck[] = capacitance.torus_above_plane.flatMap(
  ({ name, D, d, centre_height, C_F, E_max_per_volt }) => {
    const electrode = () => ringElectrode((D - d) / 2, d / 2, centre_height, NODES);
    const source = "spectral boundary elements with ground image, 1e-10";
    return [
      {
        id: `torus-over-plane-${name}`,
        group: "Capacitance",
        name: `Torus over a plane ${name}`,
        source,
        reference: C_F,
        unit: "F",
        tolerance: 1e-4,
        compute: () => total(nodeCharges(electrode(), PLANE)),
      },
      {
        id: `torus-over-plane-field-${name}`,
        group: "Capacitance",
        name: `Largest surface field of the torus over a plane ${name}`,
        source,
        reference: E_max_per_volt,
        unit: "1/m",
        tolerance: 5e-3,
        compute: () => largestField(electrode(), nodeCharges(electrode(), PLANE)),
      },
    ];
  },
);

const publishedTori: ReferenceCheck[] = Object.entries(publishedValue("C-torus")).map(([name, value]) => {
  const [R, a] = [...name.matchAll(/=([\d.]+)/g)].map((match) => Number(match[1]));
  return {
    id: `published-torus-${R}-${a}`,
    group: "Published values",
    name: `Isolated torus ${name} m`,
    source: "Smythe, Static and Dynamic Electricity (1950), p. 239; from memory, recomputed",
    reference: (value as number[])[0] * 1e-12,
    unit: "F",
    tolerance: 1e-4,
    compute: () =>
      isolatedCapacitance([
        { shape: "toroid" as const, outerDiameter: 2 * (R + a), tubeDiameter: 2 * a, centreHeight: 1 },
      ]) ?? Number.NaN,
  };
});

const publishedSphere: ReferenceCheck[] = Object.entries(publishedValue("C-sphere-plane")).map(
  ([ratio, value]) => ({
    id: `published-sphere-over-plane-${ratio}`,
    group: "Published values",
    name: `Sphere over a plane, height over radius ${ratio}, in 4πε₀a`,
    source: "Maxwell, Treatise, vol. 1, ch. XI (images); from memory, recomputed",
    reference: value as number,
    unit: "",
    tolerance: 1e-4,
    compute: () =>
      total(nodeCharges(sphereElectrode(1, Number(ratio), 48), PLANE)) / (4 * Math.PI * ELECTRIC_CONSTANT),
  }),
);

export const CAPACITANCE_CHECKS: readonly ReferenceCheck[] = [
  ...tori,
  ...spheres,
  ...toriOverPlane,
  ...publishedTori,
  ...publishedSphere,
];
