/**
 * Self-inductance of a true spiral (flat, conical or helical) of round conductor as a smooth function
 * of the tap, by Neumann's double integral.
 *
 * L(T) = (μ₀/4π)·2∫₀ᵀ g(t) dt, g(t) = ∫₀ᵗ r′(t)·r′(s)/|r(t) − r(s)| ds, angles in radians. The
 * conductor's own thickness enters as Maxwell's geometric mean distance: within the same turn the
 * distance is √(d² + ρ²), which turns a closed ring into μ₀R[ln(8R/ρ) − 2] (surface current).
 *
 * The integrand is peaked where the conductor passes itself at the same azimuth, j turns apart:
 * w²/√(w²u² + dⱼ²) with w² = r(t)r(s) and dⱼ = j·pitch (d₀ = ρ). These peaks are integrated in closed
 * form, only the smooth rest by the trapezoidal rule with end corrections. L is tabulated cumulatively,
 * so one table serves all taps.
 *
 * Sources: Neumann's formula, Grover, Inductance Calculations (1946), ch. 1; geometric mean distance
 * ibid. ch. 3; Euler–Maclaurin end corrections, Abramowitz & Stegun 25.4.7.
 */
import { MAGNETIC_CONSTANT } from "../constants";

export interface Spiral {
  /** m, at the start */
  radius: number;
  /** m per turn, outward */
  radialAdvance: number;
  /** m per turn, along the axis */
  axialAdvance: number;
  /** m, radius of the conductor */
  conductorRadius: number;
  turns: number;
}

/** Table of a spiral's inductance against the tap; read it with {@link spiralInductance}. */
export interface SpiralTable {
  /** rad between entries */
  step: number;
  /** ∫ of the smooth part of g, m, at each multiple of `step` */
  smoothIntegral: Float64Array;
  /** smooth part of g, m/rad */
  smooth: Float64Array;
  /** w of the steps that g takes at each whole turn, m */
  stepWeight: Float64Array;
  /** rad, width of these steps */
  stepWidth: Float64Array;
}

const STEPS_PER_TURN = 32;

/** cos u / (2 sin(u/2)) = (1 − 11u²/24 + …)/u: how two neighbouring arcs turn away from each other. */
const CURVATURE = 11 / 24;

/** Tabulates a spiral; its cost grows with turns². `refinement` multiplies the nodes per turn. */
export function tabulateSpiral(spiral: Spiral, refinement = 1): SpiralTable {
  const perTurn = 2 * Math.round((STEPS_PER_TURN * refinement) / 2);
  const step = (2 * Math.PI) / perTurn;
  const count = Math.ceil(spiral.turns * perTurn) + 2;
  const smooth = linkage(spiral, perTurn, count);
  const { stepWeight, stepWidth } = passingSteps(spiral, Math.ceil(count / perTurn) + 1);
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < stepWeight.length; j++) {
      smooth[i] =
        (smooth[i] as number) -
        passingStep(i * step - 2 * Math.PI * j, stepWeight[j] as number, stepWidth[j] as number, j);
    }
  }
  return { step, smoothIntegral: cumulativeIntegral(smooth, step), smooth, stepWeight, stepWidth };
}

/**
 * Self-inductance, H, from the start to `tap` turns, surface current. Add the internal inductance of
 * the conductor for a current that fills it.
 * Valid for 0 ≤ tap ≤ the tabulated turns; NaN outside.
 */
export function spiralInductance(table: SpiralTable, tap: number): number {
  const angle = 2 * Math.PI * tap;
  const { step, smoothIntegral, smooth, stepWeight, stepWidth } = table;
  const i = Math.min(Math.floor(angle / step), smooth.length - 2);
  if (!(tap >= 0) || angle > (smooth.length - 1) * step) return Number.NaN;
  let integral = hermite(smoothIntegral, smooth, i, angle / step - i, step);
  for (let j = 0; j < stepWeight.length; j++) {
    const weight = stepWeight[j] as number;
    integral += passingStepIntegral(angle - 2 * Math.PI * j, weight, stepWidth[j] as number, j);
  }
  return (MAGNETIC_CONSTANT / (2 * Math.PI)) * integral;
}

/** g at each multiple of the step. */
function linkage(spiral: Spiral, perTurn: number, count: number): Float64Array {
  const g = new Float64Array(count);
  const cosine = new Float64Array(perTurn);
  for (let i = 0; i < perTurn; i++) cosine[i] = Math.cos((2 * Math.PI * i) / perTurn);
  const sine = cosine.map((_, i) => Math.sin((2 * Math.PI * i) / perTurn));
  for (let i = 1; i < count; i++) g[i] = linkageAt(spiral, i, perTurn, cosine, sine);
  return g;
}

function linkageAt(
  spiral: Spiral,
  i: number,
  perTurn: number,
  cosine: Float64Array,
  sine: Float64Array,
): number {
  const step = (2 * Math.PI) / perTurn;
  const radial = spiral.radialAdvance / perTurn;
  const advance = spiral.axialAdvance / perTurn;
  const radialSlope = spiral.radialAdvance / (2 * Math.PI);
  const slopeSquared = radialSlope * radialSlope + (spiral.axialAdvance / (2 * Math.PI)) ** 2;
  const axialSquared = slopeSquared - radialSlope * radialSlope;
  const own = spiral.radius + i * radial;
  const softening = spiral.conductorRadius * spiral.conductorRadius;
  const half = perTurn / 2;
  let total = 0;
  for (let first = 0; first <= i; ) {
    const turn = first <= half ? 0 : Math.floor((first + half - 1) / perTurn);
    const from = turn === 0 ? 0 : turn * perTurn - half;
    const to = Math.min(turn * perTurn + half, i);
    const partner = spiral.radius + (i - turn * perTurn) * radial;
    const w2 = own * partner + slopeSquared;
    const d2 = turn === 0 ? softening : turn * turn * (spiral.radialAdvance ** 2 + spiral.axialAdvance ** 2);
    let sum = 0;
    let second = 0;
    let beforeLast = 0;
    let last = 0;
    for (let k = from; k <= to; k++) {
      const r = own - k * radial;
      const index = k % perTurn;
      const c = cosine[index] as number;
      const z = k * advance;
      const difference = own - r;
      const distanceSquared =
        difference * difference + 2 * own * r * (1 - c) + z * z + (turn === 0 ? softening : 0);
      const product =
        (own * r + radialSlope * radialSlope) * c +
        radialSlope * (own - r) * -(sine[index] as number) +
        axialSquared;
      const u = (k - turn * perTurn) * step;
      const passing = Math.sqrt(w2 * u * u + d2);
      const value =
        k === 0
          ? -0.5 * radialSlope
          : product / Math.sqrt(distanceSquared) - (w2 * (1 - CURVATURE * u * u)) / passing;
      const weight = k === from || k === to ? 0.5 : 1;
      sum += weight * value;
      if (k === from) second -= value;
      if (k === from + 1) second += value;
      beforeLast = last;
      last = value;
    }
    if (to > from) {
      total += step * sum - (step / 12) * (last - beforeLast - second);
      total += passingIntegral((to - turn * perTurn) * step, w2, d2);
      total -= passingIntegral((from - turn * perTurn) * step, w2, d2);
    }
    if (to === i) break;
    first = to + 1;
  }
  return total;
}

/** ∫₀ᵘ w²(1 − 11u²/24)/√(w²u² + d²) du */
function passingIntegral(u: number, w2: number, d2: number): number {
  const w = Math.sqrt(w2);
  const weight = w + (0.5 * CURVATURE * d2) / w;
  return weight * Math.asinh((w * u) / Math.sqrt(d2)) - 0.5 * CURVATURE * u * Math.sqrt(w2 * u * u + d2);
}

/** The end of the spiral passes its start at each whole turn j: weight and width of that step in g. */
function passingSteps(spiral: Spiral, count: number): { stepWeight: Float64Array; stepWidth: Float64Array } {
  const pitch = Math.hypot(spiral.radialAdvance, spiral.axialAdvance);
  const slope = pitch / (2 * Math.PI);
  const stepWeight = new Float64Array(count);
  const stepWidth = new Float64Array(count);
  for (let j = 0; j < count; j++) {
    const weight = Math.sqrt(
      Math.abs(spiral.radius * (spiral.radius + j * spiral.radialAdvance)) + slope * slope,
    );
    stepWeight[j] = weight;
    stepWidth[j] = (j === 0 ? spiral.conductorRadius : j * pitch) / weight;
  }
  return { stepWeight, stepWidth };
}

/** w·asinh(u/δ) rising through the passing, from half a turn before to half a turn after it. */
function passingStep(u: number, weight: number, width: number, j: number): number {
  const start = j === 0 ? 0 : -Math.PI;
  if (u <= start) return 0;
  return weight * (Math.asinh(Math.min(u, Math.PI) / width) - Math.asinh(start / width));
}

function passingStepIntegral(u: number, weight: number, width: number, j: number): number {
  const start = j === 0 ? 0 : -Math.PI;
  if (u <= start) return 0;
  const end = Math.min(u, Math.PI);
  const rising =
    asinhPrimitive(end, width) - asinhPrimitive(start, width) - (end - start) * Math.asinh(start / width);
  return weight * rising + (u - end) * passingStep(Math.PI, weight, width, j);
}

function asinhPrimitive(u: number, width: number): number {
  return u * Math.asinh(u / width) - Math.hypot(u, width);
}

/** Cumulative integral, each interval by the cubic through its four neighbours. */
function cumulativeIntegral(values: Float64Array, step: number): Float64Array {
  const integral = new Float64Array(values.length);
  const last = values.length - 1;
  for (let i = 0; i < last; i++) {
    const a = values[Math.max(i - 1, 0)] as number;
    const b = values[i] as number;
    const c = values[i + 1] as number;
    const d = values[Math.min(i + 2, last)] as number;
    const inside = i > 0 && i + 2 <= last;
    const area = inside ? (13 * (b + c) - a - d) / 24 : (b + c) / 2;
    integral[i + 1] = (integral[i] as number) + step * area;
  }
  return integral;
}

function hermite(values: Float64Array, slopes: Float64Array, i: number, t: number, step: number): number {
  const a = values[i] as number;
  const b = values[i + 1] as number;
  const p = step * (slopes[i] as number);
  const q = step * (slopes[i + 1] as number);
  return a + t * (p + t * (3 * (b - a) - 2 * p - q + t * (2 * (a - b) + p + q)));
}
