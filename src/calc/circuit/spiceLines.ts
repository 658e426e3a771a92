/** Lines of a SPICE netlist that response and burst share. */
import type { ModeCircuit, SparkLoad } from "./network";

export function spiceNumber(value: number): string {
  return value.toExponential(9);
}

/**
 * Each mode, normalised to one volt at the top, is a parallel tank; the tanks are in series from ground
 * to the node `top`, because the top's voltage is the sum over the modes and the spark's current flows
 * through every one of them. Coupled to an inductor `Lprimary`; a negative mutual swaps the nodes.
 * @param primary H, inductance of the primary loop
 */
export function modeLines(modes: readonly ModeCircuit[], primary: number): string[] {
  return modes.flatMap((mode, index) => {
    const order = index + 1;
    const below = index === 0 ? "0" : `stack${index}`;
    const above = order === modes.length ? "top" : `stack${order}`;
    const factor = mode.mutual / Math.sqrt(primary * mode.inductance);
    const [start, end] = factor < 0 ? [below, `inner${order}`] : [`inner${order}`, below];
    return [
      `* mode ${order}`,
      `Cmode${order} ${above} ${below} ${spiceNumber(mode.capacitance)}`,
      `Rmode${order} ${above} inner${order} ${spiceNumber(mode.resistance)}`,
      `Lmode${order} ${start} ${end} ${spiceNumber(mode.inductance)}`,
      ...(factor === 0 ? [] : [`Kmode${order} Lprimary Lmode${order} ${Math.abs(factor).toExponential(12)}`]),
    ];
  });
}

export function loadLines(load: SparkLoad | null): string[] {
  if (!load || load.capacitance === 0) return [];
  const tip = load.topology === "series" ? "tip" : "0";
  return [
    "* spark",
    `Rspark top ${tip} ${spiceNumber(load.resistance)}`,
    `Cspark ${load.topology === "series" ? "tip" : "top"} 0 ${spiceNumber(load.capacitance)}`,
  ];
}

export function titleLine(title: string, what: string): string {
  return `* ${title.replace(/\s+/g, " ").trim()}: ${what}`;
}
