/** Copper and aluminium as conductors: resistivity, density, resistance and mass of a wire. */
import { MAGNETIC_CONSTANT } from "../constants";

export type ConductorMaterial = "copper" | "aluminium";

interface ConductorData {
  /** Ω·m at 20 °C */
  resistivity: number;
  /** 1/K at 20 °C */
  temperatureCoefficient: number;
  /** kg/m³ */
  density: number;
}

/**
 * Copper: 1/58 Ω·mm²/m, 0.00393 /K, 8890 kg/m³. Aluminium, hard-drawn: 0.028264 Ω·mm²/m, 0.00403 /K, 2703 kg/m³.
 * Source: iec60028, copper; iec60889, aluminium.
 */
const CONDUCTORS: Record<ConductorMaterial, ConductorData> = {
  copper: { resistivity: 1e-6 / 58, temperatureCoefficient: 0.00393, density: 8890 },
  aluminium: { resistivity: 2.8264e-8, temperatureCoefficient: 0.00403, density: 2703 },
};

const REFERENCE_TEMPERATURE = 293.15;

/** Of the resistivity at 20 °C: what impurities leave in cold metal of ordinary purity (common practice, no source). */
const RESIDUAL = 0.02;

/**
 * Ω·m at `temperature` K; the linear law of IEC 60028 holds from about −50 to 200 °C. Far below, where it would
 * fall to zero, the residual resistivity applies.
 */
export function resistivity(material: ConductorMaterial, temperature: number): number {
  const { resistivity: atReference, temperatureCoefficient } = CONDUCTORS[material];
  const linear = 1 + temperatureCoefficient * (temperature - REFERENCE_TEMPERATURE);
  return atReference * Math.max(linear, RESIDUAL);
}

/** Ω, direct-current resistance of round wire; lengths in m, resistivity in Ω·m. */
export function wireResistance(length: number, diameter: number, ohmMetres: number): number {
  return (ohmMetres * length) / (0.25 * Math.PI * diameter * diameter);
}

/** kg, bare wire */
export function wireMass(length: number, diameter: number, material: ConductorMaterial): number {
  return CONDUCTORS[material].density * length * 0.25 * Math.PI * diameter * diameter;
}

/** m, δ = √(ρ/(π·f·μ₀)); `frequency` in Hz. Source: smythe1950, sec. 10.02. */
export function skinDepth(ohmMetres: number, frequency: number): number {
  return Math.sqrt(ohmMetres / (Math.PI * frequency * MAGNETIC_CONSTANT));
}
