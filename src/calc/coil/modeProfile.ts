/** What a mode looks like along the winding. */
import type { Secondary } from "../design-parts";
import { modeCurrent, type SecondaryMode } from "./secondaryModes";

export interface ProfilePoint {
  /** m above ground */
  height: number;
  /** normalised to its maximum */
  voltage: number;
  /** normalised to its maximum */
  current: number;
}

const POINTS = 50;

/** Voltage and current of a mode at equal steps along the winding, its foot first. */
export function modeProfile(
  mode: SecondaryMode,
  functions: number,
  { baseHeight, windingLength }: Pick<Secondary, "baseHeight" | "windingLength">,
): ProfilePoint[] {
  const sections = mode.voltage.length - 1;
  const points = Array.from({ length: POINTS + 1 }, (_, index) => {
    const part = index / POINTS;
    return {
      height: baseHeight + part * windingLength,
      voltage: mode.voltage[Math.round(part * sections)],
      current: modeCurrent(mode, functions, part),
    };
  });
  const largest = (of: (point: ProfilePoint) => number): number =>
    Math.max(...points.map((point) => Math.abs(of(point))));
  const [voltage, current] = [largest((point) => point.voltage), largest((point) => point.current)];
  return points.map((point) => ({
    ...point,
    voltage: point.voltage / voltage,
    current: point.current / current,
  }));
}

/** The winding's voltage at a height, as a part of its largest; held beyond the ends. */
export function profileVoltage(profile: readonly ProfilePoint[], height: number): number {
  const above = profile.findIndex((point) => point.height >= height);
  if (above === 0) return profile[0].voltage;
  if (above < 0) return profile[profile.length - 1].voltage;
  const [a, b] = [profile[above - 1], profile[above]];
  return a.voltage + ((height - a.height) / (b.height - a.height)) * (b.voltage - a.voltage);
}

/** Steepest voltage along the winding, 1/m, at 1 V at the top. */
export function steepestGradient(mode: SecondaryMode, windingLength: number): number {
  const sections = mode.voltage.length - 1;
  let largest = 0;
  for (let s = 1; s <= sections; s++)
    largest = Math.max(largest, Math.abs(mode.voltage[s] - mode.voltage[s - 1]));
  return (largest * sections) / windingLength;
}

/** Steepest voltage along the winding, V/m, at a top voltage. */
export function gradientAt(steepestPerVolt: number, topVoltage: number): number {
  return steepestPerVolt * topVoltage;
}
