/**
 * Axisymmetric conductors as curves in the half plane (radius, height), each with nodes at equal steps
 * of a parameter in which its charge is smooth.
 */
import { openLogarithmWeights, periodicLogarithmWeights } from "./logarithmWeights";

export interface Electrode {
  /** closed: parameter 0 … 2π round the section; open: 0 … π from end to end */
  closed: boolean;
  /** m, of the nodes */
  radius: Float64Array;
  /** m */
  height: Float64Array;
  /** m, length of curve per unit of the parameter; for open curves per unit of its cosine */
  speed: Float64Array;
  /** m, length of curve that a node represents */
  share: Float64Array;
  /** weights of the logarithm, see `logarithmWeights` */
  logarithm: Float64Array;
  /** step of the parameter between nodes */
  step: number;
}

function empty(count: number, closed: boolean): Electrode {
  return {
    closed,
    radius: new Float64Array(count),
    height: new Float64Array(count),
    speed: new Float64Array(count),
    share: new Float64Array(count),
    logarithm: closed ? periodicLogarithmWeights(count) : openLogarithmWeights(count),
    step: (closed ? 2 * Math.PI : Math.PI) / count,
  };
}

/**
 * A ring of round section: a toroid, a turn of tube, a rail.
 * @param centreRadius m, axis to the section's centre, above `tubeRadius`
 * @param count even number of nodes; node 0 is half a step above the outer equator
 */
export function ringElectrode(
  centreRadius: number,
  tubeRadius: number,
  centreHeight: number,
  count: number,
): Electrode {
  const electrode = empty(count, true);
  for (let i = 0; i < count; i++) {
    const angle = (i + 0.5) * electrode.step;
    electrode.radius[i] = centreRadius + tubeRadius * Math.cos(angle);
    electrode.height[i] = centreHeight + tubeRadius * Math.sin(angle);
    electrode.speed[i] = tubeRadius;
    electrode.share[i] = tubeRadius * electrode.step;
  }
  return electrode;
}

/** An open cylindrical sheet; the substitution z = mid − ½·length·cos t takes out the edges' root singularity. */
export function sheetElectrode(radius: number, lowerEnd: number, length: number, count: number): Electrode {
  const electrode = empty(count, false);
  for (let i = 0; i < count; i++) {
    const t = (i + 0.5) * electrode.step;
    electrode.radius[i] = radius;
    electrode.height[i] = lowerEnd + 0.5 * length * (1 - Math.cos(t));
    electrode.speed[i] = 0.5 * length;
    electrode.share[i] = 0.5 * length * Math.sin(t) * electrode.step;
  }
  return electrode;
}

/**
 * A sphere from pole to pole. The polar angle t − ½ sin 2t crowds the nodes at the poles, where the
 * ring charge vanishes like the fifth power of the parameter and so continues smoothly.
 */
export function sphereElectrode(radius: number, centreHeight: number, count: number): Electrode {
  const electrode = empty(count, false);
  for (let i = 0; i < count; i++) {
    const t = (i + 0.5) * electrode.step;
    const polar = t - 0.5 * Math.sin(2 * t);
    const slope = 1 - Math.cos(2 * t);
    electrode.radius[i] = radius * Math.sin(polar);
    electrode.height[i] = centreHeight - radius * Math.cos(polar);
    electrode.speed[i] = (radius * slope) / Math.sin(t);
    electrode.share[i] = radius * slope * electrode.step;
  }
  return electrode;
}

/** Number of nodes. */
export function nodeCount(electrode: Electrode): number {
  return electrode.radius.length;
}

/**
 * Surface field at a node from its charge, V/m: E = σ/ε₀ over the strip that the node represents.
 * @param charge C, whole ring charge of the node
 */
export function surfaceField(
  electrode: Electrode,
  node: number,
  charge: number,
  electricConstant: number,
): number {
  return charge / (2 * Math.PI * electrode.radius[node] * electrode.share[node] * electricConstant);
}
