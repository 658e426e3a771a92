import { resistivity, skinDepth, wireMass, wireResistance } from "../../calc/coil/conductor";
import type { ElectricField } from "../../calc/coil/electricField";
import { formerCapacitance } from "../../calc/coil/formerCorrection";
import { modeCurrent, type SecondaryMode } from "../../calc/coil/secondaryModes";
import { roundWireSkinEffect } from "../../calc/coil/skinEffect";
import { type WindingLoss, windingAcResistance, windingWireLength } from "../../calc/coil/windingLoss";
import type { Corrections, Secondary } from "../../calc/design-parts";
import type { ProfilePoint } from "../evaluation";
import { guarded } from "../solvable";
import { stage } from "../stage";
import { type Modes, roundWireWinding, SECTIONS } from "./secondaryModes";

/** The modes as the rest of the road uses them: corrected, and with their losses. */
export interface SecondaryCircuit {
  modes: {
    /** Hz, former included */
    resonance: number;
    /** F */
    capacitance: number;
    inductance: number;
    /** Ω, of the mode normalised to the top */
    resistance: number;
    qualityFactor: number;
    /** A per section at 1 V at the top */
    current: number[];
    /** A at the foot of the winding, likewise */
    baseCurrent: number;
  }[];
  bareResonance: number;
  /** Ω, of the fundamental, referred to its largest current */
  acResistance: number;
  /** Ω, what makes up `acResistance`; as computed, also where a measured Q takes its place */
  lossParts: { directCurrent: number; skin: number; proximity: number; allowance: number };
  dcResistance: number;
  wireLength: number;
  wireMass: number;
  profile: ProfilePoint[];
  /** 1/m */
  maximumGradientPerVolt: number;
  /** H, low frequency */
  inductance: number;
}

const PROFILE_POINTS = 50;

/** Factor by which the former lowers a mode's frequency: √(C/(C + ΔC)); 1 where it is switched off. */
export function formerFactor(
  mode: SecondaryMode,
  secondary: Secondary,
  corrections: Pick<Corrections, "former">,
): number {
  if (!corrections.former) return 1;
  const { formerDiameter, formerPermittivity, windingLength } = secondary;
  // a finding says where the wall is more than there is
  const wall = Math.min(secondary.formerWall, 0.5 * formerDiameter);
  const radius = 0.5 * (formerDiameter - wall);
  const added = formerCapacitance(mode, radius, wall, formerPermittivity, windingLength);
  return Math.sqrt(mode.effectiveCapacitance / (mode.effectiveCapacitance + added));
}

function profileOf(mode: SecondaryMode, field: ElectricField, secondary: Secondary): ProfilePoint[] {
  const functions = field.functions;
  const points = Array.from({ length: PROFILE_POINTS + 1 }, (_, index) => {
    const part = index / PROFILE_POINTS;
    return {
      height: secondary.baseHeight + part * secondary.windingLength,
      voltage: mode.voltage[Math.round(part * SECTIONS)],
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

function steepest(mode: SecondaryMode, length: number): number {
  let largest = 0;
  for (let s = 1; s <= SECTIONS; s++)
    largest = Math.max(largest, Math.abs(mode.voltage[s] - mode.voltage[s - 1]));
  return (largest * SECTIONS) / length;
}

/** The loss as a straight wire would have it, and what the field of the other turns adds. */
function lossParts(loss: WindingLoss, skinRatio: number, allowance: number, largestCurrent: number) {
  const perSquare = 1 / largestCurrent ** 2;
  const directCurrent = loss.directCurrentResistance * perSquare;
  const skin = directCurrent * (skinRatio - 1);
  const whole = loss.resistance * perSquare;
  return { directCurrent, skin, proximity: whole - directCurrent - skin, allowance: whole * allowance };
}

function sumOf(matrix: Float64Array): number {
  return matrix.reduce((sum, value) => sum + value, 0);
}

export const secondaryCircuitStage = guarded(
  ["secondary.former", "secondary.windingTemperature", "secondary.measuredQ", "corrections"],
  null,
  stage(
    (design) => ({
      secondary: design.secondary,
      corrections: design.corrections,
      winding: roundWireWinding(design),
    }),
    (
      { secondary, corrections, winding },
      field: ElectricField | null,
      modes: Modes | null,
    ): SecondaryCircuit | null => {
      if (!field || !modes) return null;
      const { wire } = secondary;
      const ohmMetres = resistivity(wire.material, secondary.windingTemperature);
      const wireLength = windingWireLength(winding);
      const fundamental = modes.loaded[0];
      const losses = modes.loaded.map((mode) =>
        windingAcResistance(winding, mode.current, mode.resonance, ohmMetres),
      );
      const resistances = losses.map(({ resistance }) => resistance * (1 + corrections.lossAllowance));
      const skin = roundWireSkinEffect(
        wire.conductorDiameter / skinDepth(ohmMetres, fundamental.resonance),
      ).resistanceRatio;
      const circuits = modes.loaded.map((mode, index) => {
        const factor = formerFactor(mode, secondary, corrections);
        const omega = 2 * Math.PI * mode.resonance * factor;
        const capacitance = mode.effectiveCapacitance / (factor * factor);
        const computed = (omega * capacitance) / resistances[index];
        const qualityFactor = index === 0 ? (secondary.measuredQ ?? computed) : computed;
        const inductance = 1 / (omega * omega * capacitance);
        return {
          resonance: mode.resonance * factor,
          capacitance,
          inductance,
          resistance: (omega * inductance) / qualityFactor,
          qualityFactor,
          current: mode.current.map((value) => value * factor),
          baseCurrent: modeCurrent(mode, field.functions, 0) * factor,
        };
      });
      const largestCurrent = Math.max(...fundamental.current.map(Math.abs));
      return {
        modes: circuits,
        bareResonance: modes.bare[0].resonance * formerFactor(modes.bare[0], secondary, corrections),
        acResistance: resistances[0] / largestCurrent ** 2,
        lossParts: lossParts(losses[0], skin, corrections.lossAllowance, largestCurrent),
        dcResistance: wireResistance(wireLength, wire.conductorDiameter, ohmMetres),
        wireLength,
        wireMass: wireMass(wireLength, wire.conductorDiameter, wire.material),
        profile: profileOf(fundamental, field, secondary),
        maximumGradientPerVolt: steepest(fundamental, secondary.windingLength),
        inductance: sumOf(modes.inductance.matrix),
      };
    },
  ),
);
