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
 * Source: grover1946, ch. 1 (Neumann's formula) and ch. 3 (geometric mean distance); abramowitzStegun,
 * 25.4.7 (Euler–Maclaurin end corrections).
 */

import { MAGNETIC_CONSTANT } from "../constants";
import { hermite } from "../linear/hermite";

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
      smooth[i] = smooth[i] - passingStep(i * step - 2 * Math.PI * j, stepWeight[j], stepWidth[j], j);
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
  const [from, to] = [smoothIntegral[i], smoothIntegral[i + 1]];
  let integral = hermite(from, to, step * smooth[i], step * smooth[i + 1], angle / step - i);
  for (let j = 0; j < stepWeight.length; j++) {
    const weight = stepWeight[j];
    integral += passingStepIntegral(angle - 2 * Math.PI * j, weight, stepWidth[j], j);
  }
  return (MAGNETIC_CONSTANT / (2 * Math.PI)) * integral;
}

/** The spiral on its nodes: advances are per node, slopes per radian. */
interface SampledSpiral {
  start: number;
  radial: number;
  axial: number;
  radialSlope: number;
  slopeSquared: number;
  pitch: number;
  conductorRadius: number;
  perTurn: number;
  step: number;
  cosine: Float64Array;
  sine: Float64Array;
}

function sample(spiral: Spiral, perTurn: number): SampledSpiral {
  const pitch = Math.hypot(spiral.radialAdvance, spiral.axialAdvance);
  const step = (2 * Math.PI) / perTurn;
  return {
    start: spiral.radius,
    radial: spiral.radialAdvance / perTurn,
    axial: spiral.axialAdvance / perTurn,
    radialSlope: spiral.radialAdvance / (2 * Math.PI),
    slopeSquared: (pitch / (2 * Math.PI)) ** 2,
    pitch,
    conductorRadius: spiral.conductorRadius,
    perTurn,
    step,
    cosine: Float64Array.from({ length: perTurn }, (_, i) => Math.cos(i * step)),
    sine: Float64Array.from({ length: perTurn }, (_, i) => Math.sin(i * step)),
  };
}

/** g at each multiple of the step: one window per turn, centred where the conductor passes itself. */
function linkage(spiral: Spiral, perTurn: number, count: number): Float64Array {
  const sampled = sample(spiral, perTurn);
  const g = new Float64Array(count);
  for (let i = 1; i < count; i++) {
    let total = windowLinkage(sampled, i, 0, 0, Math.min(perTurn / 2, i));
    for (let turn = 1; (turn - 0.5) * perTurn < i; turn++) {
      const from = (turn - 0.5) * perTurn;
      total += windowLinkage(sampled, i, turn, from, Math.min(from + perTurn, i));
    }
    g[i] = total;
  }
  return g;
}

/** ∫ over the nodes `from` to `to` back from node i: closed form of the peak, trapezoidal rule for the rest. */
function windowLinkage(spiral: SampledSpiral, i: number, turn: number, from: number, to: number): number {
  const { perTurn, step } = spiral;
  const own = spiral.start + i * spiral.radial;
  // before the spiral's start there is no passing: a peak taken out there is put back in closed form
  const passed = Math.max(0, own - turn * perTurn * spiral.radial);
  const w2 = own * passed + spiral.slopeSquared;
  const softening = turn === 0 ? spiral.conductorRadius ** 2 : 0;
  const d2 = turn === 0 ? softening : (turn * spiral.pitch) ** 2;
  let sum = 0;
  let first = 0;
  let second = 0;
  let beforeLast = 0;
  let last = 0;
  for (let k = from; k <= to; k++) {
    const u = (k - turn * perTurn) * step;
    const peak = (w2 * (1 - CURVATURE * u * u)) / Math.sqrt(w2 * u * u + d2);
    const value = k === 0 ? -0.5 * spiral.radialSlope : neumann(spiral, own, k, softening) - peak;
    sum += value;
    if (k === from) first = value;
    if (k === from + 1) second = value;
    beforeLast = last;
    last = value;
  }
  const trapezoid = sum - 0.5 * (first + last) - (last - beforeLast - second + first) / 12;
  const start = (from - turn * perTurn) * step;
  const end = (to - turn * perTurn) * step;
  return step * trapezoid + passingIntegral(end, w2, d2) - passingIntegral(start, w2, d2);
}

/** r′(t)·r′(s)/√(|r(t) − r(s)|² + softening), s lying k nodes before t where the radius is `own`. */
function neumann(spiral: SampledSpiral, own: number, k: number, softening: number): number {
  const { radialSlope } = spiral;
  const apart = k * spiral.radial;
  const r = own - apart;
  const c = spiral.cosine[k % spiral.perTurn];
  const sine = spiral.sine[k % spiral.perTurn];
  const z = k * spiral.axial;
  const distanceSquared = apart * apart + 2 * own * r * (1 - c) + z * z + softening;
  const radialSquared = radialSlope * radialSlope;
  const product =
    (own * r + radialSquared) * c - radialSlope * apart * sine + spiral.slopeSquared - radialSquared;
  return product / Math.sqrt(distanceSquared);
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
    const a = values[Math.max(i - 1, 0)];
    const b = values[i];
    const c = values[i + 1];
    const d = values[Math.min(i + 2, last)];
    const inside = i > 0 && i + 2 <= last;
    const area = inside ? (13 * (b + c) - a - d) / 24 : (b + c) / 2;
    integral[i + 1] = integral[i] + step * area;
  }
  return integral;
}
