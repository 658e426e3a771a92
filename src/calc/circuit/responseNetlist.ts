import type { Network } from "./network";
import { polePair } from "./poles";
import { loadLines, modeLines, spiceNumber, titleLine } from "./spiceLines";

/** Largest step over the lower pole. */
const STEP = 2e-4;

function sweepLine(lower: number, upper: number): string {
  const [from, to] = [0.7 * lower, 1.3 * upper];
  const points = Math.ceil((to - from) / (STEP * lower)) + 1;
  return `.ac lin ${points} ${spiceNumber(from)} ${spiceNumber(to)}`;
}

export interface ResponseNetlistOptions {
  /** with the network's spark load, or without */
  loaded: boolean;
  title?: string;
}

/**
 * The frequency response as a SPICE netlist that runs in batch as it is: one volt in the bridge's place,
 * one linear sweep over both poles; prints the top's voltage and the current drawn from the bridge.
 * Where a spark damps both poles away, the sweep covers those without it.
 * @returns null if the network has no pair of poles to sweep over
 */
export function responseNetlist(
  network: Network,
  { loaded, title = "Coilwright" }: ResponseNetlistOptions,
): string | null {
  const swept = loaded ? network : { ...network, load: null };
  const poles = polePair(swept) ?? polePair({ ...network, load: null });
  if (!poles) return null;
  const { primary, modes, load } = swept;
  return [
    titleLine(title, `frequency response, ${load ? "with" : "without"} a spark`),
    "Vbridge bridge 0 dc 0 ac 1",
    `Cprimary bridge tank ${spiceNumber(primary.capacitance)}`,
    `Rprimary tank coil ${spiceNumber(primary.resistance)}`,
    `Lprimary coil 0 ${spiceNumber(primary.inductance)}`,
    ...modeLines(modes, primary.inductance),
    ...loadLines(load),
    sweepLine(poles.lower.frequency, poles.upper.frequency),
    ".print ac vm(top) vp(top) im(Vbridge) ip(Vbridge)",
    ".end",
    "",
  ].join("\n");
}
