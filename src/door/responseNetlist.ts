/**
 * The coupled network of the frequency response as a SPICE netlist that runs in batch as it is.
 * Each mode of the secondary, normalised to one volt at the top, is a parallel tank; the tanks stand in
 * series from ground to the top terminal, because the top's voltage is the sum over the modes and the
 * spark's current flows through every one of them.
 */

interface NetworkMode {
  /** H, L_n = 1/(ω_n² C_n) */
  inductance: number;
  /** F, C_n = 2W/V² */
  capacitance: number;
  /** Ω, R_n = ω_n L_n/Q_n */
  resistance: number;
  /** H, with its sign */
  mutualInductance: number;
}

export interface ResponseNetwork {
  title: string;
  /** H with leads, F, Ω of the whole primary circuit */
  primary: { inductance: number; capacitance: number; resistance: number };
  modes: NetworkMode[];
  /** in series from the top to ground; null without a spark */
  spark: { resistance: number; capacitance: number } | null;
  /** Hz, unloaded or loaded as the spark is */
  lowerPole: number;
  upperPole: number;
}

/** Largest step over the lower pole. */
const STEP = 2e-4;

function number(value: number): string {
  return value.toExponential(9);
}

function modeLines(mode: NetworkMode, index: number, count: number, primary: number): string[] {
  const order = index + 1;
  const below = index === 0 ? "0" : `stack${index}`;
  const above = order === count ? "top" : `stack${order}`;
  const factor = mode.mutualInductance / Math.sqrt(primary * mode.inductance);
  const [start, end] = factor < 0 ? [below, `inner${order}`] : [`inner${order}`, below];
  return [
    `* mode ${order}`,
    `Cmode${order} ${above} ${below} ${number(mode.capacitance)}`,
    `Rmode${order} ${above} inner${order} ${number(mode.resistance)}`,
    `Lmode${order} ${start} ${end} ${number(mode.inductance)}`,
    `Kmode${order} Lprimary Lmode${order} ${number(Math.abs(factor))}`,
  ];
}

function sparkLines(spark: ResponseNetwork["spark"]): string[] {
  if (!spark) return [];
  return [
    "* spark",
    `Rspark top tip ${number(spark.resistance)}`,
    `Cspark tip 0 ${number(spark.capacitance)}`,
  ];
}

function sweepLine(lowerPole: number, upperPole: number): string {
  const [from, to] = [0.7 * lowerPole, 1.3 * upperPole];
  const points = Math.ceil((to - from) / (STEP * lowerPole)) + 1;
  return `.ac lin ${points} ${number(from)} ${number(to)}`;
}

/** One volt in the bridge's place; prints the top's voltage and the current drawn from the bridge. */
export function responseNetlist(network: ResponseNetwork): string {
  const { primary, modes } = network;
  return [
    `* ${network.title.replace(/\s+/g, " ")}: frequency response`,
    "Vbridge bridge 0 dc 0 ac 1",
    `Cprimary bridge tank ${number(primary.capacitance)}`,
    `Rprimary tank coil ${number(primary.resistance)}`,
    `Lprimary coil 0 ${number(primary.inductance)}`,
    ...modes.flatMap((mode, index) => modeLines(mode, index, modes.length, primary.inductance)),
    ...sparkLines(network.spark),
    sweepLine(network.lowerPole, network.upperPole),
    ".print ac vm(top) vp(top) im(Vbridge) ip(Vbridge)",
    ".end",
    "",
  ].join("\n");
}
