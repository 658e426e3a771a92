/**
 * A burst as a SPICE netlist that runs in batch as it is.
 *
 * The bridge is a behavioural source: it puts the rail of the pair that is on across the primary; while none
 * is on, the rail that the diodes return the current to. Signs are smooth, so that the simulator's steps do not
 * get stuck. The comparator's i + leadTime·di/dt is the voltage of a copy of the current through a resistance of
 * 1 Ω and an inductance of leadTime; delays are matched lines. The over-current limit and a growing spark are
 * not included: use the time of the last turn-off as the on-time, and the full load.
 */
import { railCapacitance, railSeriesResistance, railVoltage, switchesInPath } from "../circuit/bridge";
import type { Network } from "../circuit/network";
import { loadLines, modeLines, spiceNumber, titleLine } from "../circuit/spiceLines";
import type { BurstDrive } from "./burstDrive";

interface BurstNetlistOptions {
  title?: string;
  /** s simulated; by default a third more than the on-time */
  until?: number;
}

/** A over which the sign of the current turns. */
const SIGN_CURRENT = 0.05;
/** F that represents a stiff bus. */
const STIFF = 1e3;
/** Steps of the simulator per period of the fundamental, at least. */
const STEPS_PER_PERIOD = 400;

function reservoirLines(drive: BurstDrive): string[] {
  const capacitance = spiceNumber(Math.min(railCapacitance(drive), STIFF));
  const voltage = spiceNumber(railVoltage(drive));
  const rails = [`Crailup up 0 ${capacitance} ic=${voltage}`];
  if (drive.bridge === "full") return [...rails, "Brailup up 0 I=V(rail)*I(Vsense)", "Edown down 0 up 0 1"];
  return [
    ...rails,
    `Craildown down 0 ${capacitance} ic=${voltage}`,
    "Brailup up 0 I=0.5*(1+V(rail))*abs(V(rail))*I(Vsense)",
    "Braildown down 0 I=-0.5*(1-V(rail))*abs(V(rail))*I(Vsense)",
  ];
}

/** The sign of the rail: of the pair that is on, else against the current. */
function bridgeLines(drive: BurstDrive): string[] {
  const inPath = switchesInPath(drive);
  const series = railSeriesResistance(drive);
  const drop = spiceNumber(inPath * drive.onStateVoltage);
  const sign = `tanh(I(Vsense)/${SIGN_CURRENT})`;
  return [
    `Brail rail 0 V=V(pairup)-V(pairdown)-(1-V(pairup)-V(pairdown))*${sign}`,
    `Bbridge bridge 0 V=0.5*(1+V(rail))*V(up)-0.5*(1-V(rail))*V(down)-${drop}*${sign}`,
    "Vsense bridge sensed 0",
    `Rpath sensed tap ${spiceNumber(inPath * drive.onStateResistance + series + 1e-6)}`,
  ];
}

function pulse(from: number, width: number, edge: number): string {
  return `PWL(0 ${from} ${spiceNumber(width)} ${from} ${spiceNumber(width + edge)} ${1 - from})`;
}

/** Pairs at a fixed frequency: each on from a dead time after its half period begins. */
function fixedLines({ commutation, onTime }: BurstDrive, edge: number): string[] {
  const period = 1 / (commutation.frequency ?? 1 / (4 * onTime));
  const dead = commutation.deadTime;
  const width = Math.max(0.5 * period - dead - edge, edge);
  const train = (delay: number) =>
    `PULSE(0 1 ${spiceNumber(delay)} ${spiceNumber(edge)} ${spiceNumber(edge)} ${spiceNumber(width)} ${spiceNumber(period)})`;
  const first = spiceNumber(0.5 * period - edge);
  return [
    `Vup clockup 0 ${train(period + dead)}`,
    `Vfirst clockfirst 0 PWL(0 1 ${first} 1 ${spiceNumber(0.5 * period)} 0)`,
    `Vdown clockdown 0 ${train(0.5 * period + dead)}`,
    "Bpairup pairup 0 V=V(on)*(V(clockup)+V(clockfirst))",
    "Bpairdown pairdown 0 V=V(on)*V(clockdown)",
  ];
}

function delayLine(name: string, delay: number): string[] {
  if (delay <= 0) return [`E${name} ${name} 0 compared 0 1`];
  return [
    `E${name} ${name}in 0 compared 0 2`,
    `R${name}in ${name}in ${name}line 1`,
    `T${name} ${name}line 0 ${name} 0 Z0=1 TD=${spiceNumber(delay)}`,
    `R${name} ${name} 0 1`,
  ];
}

/** Pairs from the current: on while what the comparator saw a delay ago, and a dead time before that, agree. */
function feedbackLines({ commutation }: BurstDrive, quarter: number): string[] {
  const { leadTime, delay, deadTime } = commutation;
  const start = delay + deadTime + quarter;
  const both = (sign: string) => `0.25*(1+tanh(${sign}20*V(late)))*(1+tanh(${sign}20*V(later)))`;
  return [
    "Fcopy 0 copy Vsense 1",
    "Rcopy copy copylead 1",
    leadTime > 0 ? `Lcopy copylead 0 ${spiceNumber(leadTime)}` : "Rcopylead copylead 0 1e-9",
    `Vstart start 0 ${pulse(1, start, 0.01 * quarter)}`,
    `Bcompared compared 0 V=tanh(V(copy)/${SIGN_CURRENT})`,
    ...delayLine("late", delay),
    ...delayLine("later", delay + deadTime),
    `Bpairup pairup 0 V=V(on)*(V(start)+(1-V(start))*${both("")})`,
    `Bpairdown pairdown 0 V=V(on)*(1-V(start))*${both("-")}`,
  ];
}

/** The burst's circuit: bridge with its control, primary, modes, spark; a transient analysis over it. */
export function burstNetlist(network: Network, drive: BurstDrive, options: BurstNetlistOptions = {}): string {
  const { primary, modes, load } = network;
  const { inductance, capacitance } = modes[0] ?? primary;
  const period = 2 * Math.PI * Math.sqrt(inductance * capacitance);
  const until = options.until ?? (4 / 3) * drive.onTime;
  const edge = 1e-4 * period;
  const control =
    drive.commutation.mode === "fixed frequency" ? fixedLines(drive, edge) : feedbackLines(drive, period / 8);
  return [
    titleLine(options.title ?? "Coilwright", "one burst"),
    ...reservoirLines(drive),
    ...bridgeLines(drive),
    `Von on 0 ${pulse(1, drive.onTime, edge)}`,
    ...control,
    `Cprimary tap tank ${spiceNumber(primary.capacitance)} ic=0`,
    `Rprimary tank coil ${spiceNumber(primary.resistance)}`,
    `Lprimary coil 0 ${spiceNumber(primary.inductance)}`,
    ...modeLines(modes, primary.inductance),
    ...loadLines(load),
    `.tran ${spiceNumber(period / 200)} ${spiceNumber(until)} 0 ${spiceNumber(period / STEPS_PER_PERIOD)} uic`,
    ".options reltol=1e-5 abstol=1e-4 vntol=1e-2 chgtol=1e-14 method=trap",
    ".print tran I(Vsense) V(top) V(up)",
    ".end",
    "",
  ].join("\n");
}
