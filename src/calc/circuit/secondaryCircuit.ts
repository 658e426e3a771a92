/** The secondary's modes as circuits: corrected, and with their losses. */
import { resistivity, skinDepth, wireMass, wireResistance } from "../coil/conductor";
import { formerFactor } from "../coil/formerCorrection";
import { modeProfile, type ProfilePoint, steepestGradient } from "../coil/modeProfile";
import { modeCurrent, type SecondaryMode } from "../coil/secondaryModes";
import { type SectionInductance, wholeInductance } from "../coil/sectionInductance";
import { roundWireSkinEffect } from "../coil/skinEffect";
import { type WindingLoss, windingAcResistance, windingWireLength } from "../coil/windingLoss";
import type { Corrections, Secondary } from "../design-parts";

/** A mode normalised to 1 V at the top. */
export interface ModeOfSecondary {
  /** Hz, former included */
  resonance: number;
  /** F */
  capacitance: number;
  inductance: number;
  /** Ω */
  resistance: number;
  qualityFactor: number;
  /** A per section at 1 V at the top */
  current: number[];
  /** A at the base of the winding, likewise */
  baseCurrent: number;
}

/** Ω, referred to the largest current. */
export interface WindingLossParts {
  directCurrent: number;
  skin: number;
  proximity: number;
  allowance: number;
}

export interface SecondaryCircuit {
  modes: ModeOfSecondary[];
  bareResonance: number;
  /** Ω, of the fundamental, referred to its largest current */
  acResistance: number;
  /** the parts of `acResistance`; as computed, even if a measured Q replaces it */
  lossParts: WindingLossParts;
  dcResistance: number;
  wireLength: number;
  wireMass: number;
  profile: ProfilePoint[];
  /** 1/m */
  maximumGradientPerVolt: number;
  /** H, low frequency */
  inductance: number;
}

/** The field's results for the secondary. */
export interface SolvedModes {
  /** the winding as it is at the fundamental, corrections included */
  inductance: SectionInductance;
  /** with top load; the bare ones without */
  loaded: SecondaryMode[];
  bare: SecondaryMode[];
  /** number of charge functions, the top charge not counted */
  functions: number;
}

/** The loss of a straight wire, and the part added by the field of the other turns. */
function lossParts(
  loss: WindingLoss,
  skinRatio: number,
  allowance: number,
  largestCurrent: number,
): WindingLossParts {
  const perSquare = 1 / largestCurrent ** 2;
  const directCurrent = loss.directCurrentResistance * perSquare;
  const skin = directCurrent * (skinRatio - 1);
  const whole = loss.resistance * perSquare;
  return { directCurrent, skin, proximity: whole - directCurrent - skin, allowance: whole * allowance };
}

/**
 * One mode as a circuit.
 * @param factor by which the former lowers its frequency
 * @param loss Ω, referred to the mode's own current, allowance included
 * @param measuredQ in place of the computed quality factor; null for none
 */
function modeCircuit(
  mode: SecondaryMode,
  functions: number,
  factor: number,
  loss: number,
  measuredQ: number | null,
): ModeOfSecondary {
  const omega = 2 * Math.PI * mode.resonance * factor;
  const capacitance = mode.effectiveCapacitance / (factor * factor);
  const inductance = 1 / (omega * omega * capacitance);
  const qualityFactor = measuredQ ?? (omega * capacitance) / loss;
  return {
    resonance: mode.resonance * factor,
    capacitance,
    inductance,
    resistance: (omega * inductance) / qualityFactor,
    qualityFactor,
    current: mode.current.map((value) => value * factor),
    baseCurrent: modeCurrent(mode, functions, 0) * factor,
  };
}

/** The secondary circuit, as later stages use it. */
export function secondaryCircuit(
  secondary: Secondary,
  corrections: Pick<Corrections, "former" | "lossAllowance">,
  { inductance, loaded, bare, functions }: SolvedModes,
): SecondaryCircuit {
  const { wire } = secondary;
  const { winding } = inductance;
  const ohmMetres = resistivity(wire.material, secondary.windingTemperature);
  const wireLength = windingWireLength(winding);
  const [fundamental] = loaded;
  const losses = loaded.map((mode) => windingAcResistance(winding, mode.current, mode.resonance, ohmMetres));
  const resistances = losses.map(({ resistance }) => resistance * (1 + corrections.lossAllowance));
  const depth = skinDepth(ohmMetres, fundamental.resonance);
  const skin = roundWireSkinEffect(wire.conductorDiameter / depth).resistanceRatio;
  const largestCurrent = Math.max(...fundamental.current.map(Math.abs));
  const modes = loaded.map((mode, index) =>
    modeCircuit(
      mode,
      functions,
      formerFactor(mode, secondary, corrections),
      resistances[index],
      index === 0 ? secondary.measuredQ : null,
    ),
  );
  return {
    modes,
    bareResonance: bare[0].resonance * formerFactor(bare[0], secondary, corrections),
    acResistance: resistances[0] / largestCurrent ** 2,
    lossParts: lossParts(losses[0], skin, corrections.lossAllowance, largestCurrent),
    dcResistance: wireResistance(wireLength, wire.conductorDiameter, ohmMetres),
    wireLength,
    wireMass: wireMass(wireLength, wire.conductorDiameter, wire.material),
    profile: modeProfile(fundamental, functions, secondary),
    maximumGradientPerVolt: steepestGradient(fundamental, secondary.windingLength),
    inductance: wholeInductance(inductance),
  };
}
