import type { BurstDrive } from "../../../src/calc/burst/burstDrive";
import type { BurstResult } from "../../../src/calc/burst/burstResult";
import { simulateBurst } from "../../../src/calc/burst/stepper";
import { type Network, sineResponse } from "../../../src/calc/circuit/network";
import { polePair } from "../../../src/calc/circuit/poles";
import { magnitude } from "../../../src/calc/linear/complex";
import burst from "../burst.json";
import type { ReferenceCheck } from "../check";

type SetName = keyof typeof burst.sets;
const SETS = Object.keys(burst.sets) as SetName[];
const POLES = ["lower", "upper"] as const;

export function burstNetwork(name: SetName): Network {
  const { Lp, Cp, Rp, Ls, Cs, Rs, k, Rst, Cst } = burst.sets[name].params;
  return {
    primary: { inductance: Lp, capacitance: Cp, resistance: Rp },
    modes: [{ inductance: Ls, capacitance: Cs, resistance: Rs, mutual: k * Math.sqrt(Lp * Ls) }],
    load: Rst && Cst ? { resistance: Rst, capacitance: Cst, topology: "series" } : null,
  };
}

function losslessUnloaded(name: SetName): Network {
  const { primary, modes } = burstNetwork(name);
  return {
    primary: { ...primary, resistance: 0 },
    modes: modes.map((mode) => ({ ...mode, resistance: 0 })),
    load: null,
  };
}

export function burstDriveOf(name: SetName, part: Partial<BurstDrive>): BurstDrive {
  return {
    busVoltage: burst.sets[name].params.Vbus,
    reservoirCapacitance: Number.POSITIVE_INFINITY,
    reservoirSeriesResistance: 0,
    bridge: "full",
    onStateVoltage: 0,
    onStateResistance: 1e-3,
    turnOffEnergyPerVoltAmpere: 0,
    commutation: { mode: "primary current", leadTime: 0, delay: 0, deadTime: 0, frequency: null },
    overCurrentLimit: Number.POSITIVE_INFINITY,
    overCurrentAction: "end burst",
    onTime: 150e-6,
    ...part,
  };
}

/** Place of an extreme of a magnitude near a frequency, by golden section. */
function extremeNear(frequency: number, value: (f: number) => number): number {
  let [low, high] = [frequency * 0.999, frequency * 1.001];
  const ratio = 0.5 * (Math.sqrt(5) - 1);
  while (high - low > 1e-9 * frequency) {
    const [a, b] = [high - ratio * (high - low), low + ratio * (high - low)];
    if (value(a) < value(b)) low = a;
    else high = b;
  }
  return 0.5 * (low + high);
}

const response: ReferenceCheck[] = SETS.flatMap((name) =>
  POLES.flatMap((pole): ReferenceCheck[] => {
    const { ac } = burst.sets[name];
    const network = burstNetwork(name);
    const top = (f: number) => magnitude(sineResponse(network, f).topVoltagePerVolt);
    const impedance = (f: number) => magnitude(sineResponse(network, f).inputImpedance);
    const peak = () => extremeNear(ac[pole].vtop_peak_f, top);
    const dip = () => extremeNear(ac[pole].zin_min_f, (f) => -impedance(f));
    const common = {
      group: "Coupled response",
      source: "burst.json: closed form and ngspice 39",
      tolerance: 1e-4,
    };
    return [
      ["frequency of the top voltage's peak", "Hz", ac[pole].vtop_peak_f, peak],
      ["top voltage per volt at the peak", "", ac[pole].vtop_over_vin_peak, () => top(peak())],
      ["frequency of the least input impedance", "Hz", ac[pole].zin_min_f, dip],
      ["least input impedance", "Ω", ac[pole].zin_min_ohm, () => impedance(dip())],
    ].map(([what, unit, reference, compute]) => ({
      ...common,
      id: `burst.ac.${name}.${pole}.${what}`,
      name: `network ${name}, ${pole} pole: ${what}`,
      unit: unit as string,
      reference: reference as number,
      compute: compute as () => number,
    }));
  }),
);

const lossless: ReferenceCheck[] = SETS.flatMap((name) =>
  POLES.map((pole) => ({
    id: `burst.lossless.${name}.${pole}`,
    group: "Coupled response",
    name: `network ${name} without losses and load: ${pole} pole`,
    source: "burst.json: closed form of two coupled circuits",
    unit: "Hz",
    tolerance: 1e-9,
    reference: burst.sets[name].closed_form_lossless[pole === "lower" ? "f_minus" : "f_plus"],
    compute: () => polePair(losslessUnloaded(name))?.[pole].frequency ?? Number.NaN,
  })),
);

function fixedBurst(name: SetName, frequency: number): BurstResult {
  const commutation = { mode: "fixed frequency", leadTime: 0, delay: 0, deadTime: 0, frequency } as const;
  return simulateBurst(burstNetwork(name), burstDriveOf(name, { commutation }))!;
}

const fixed: ReferenceCheck[] = SETS.flatMap((name) =>
  (["lower", "upper", "mid"] as const).flatMap((at): ReferenceCheck[] => {
    const { f_drive, exact } = burst.sets[name].fixed[at];
    const common = {
      group: "Burst at a fixed frequency",
      source: "burst.json: exact propagation and ngspice 39",
      tolerance: 1e-3,
    };
    return [
      {
        ...common,
        id: `burst.fixed.${name}.${at}.current`,
        name: `network ${name}, ${at} frequency: peak primary current`,
        unit: "A",
        reference: exact.ip_peak,
        compute: () => fixedBurst(name, f_drive).peakPrimaryCurrent.value,
      },
      {
        ...common,
        id: `burst.fixed.${name}.${at}.voltage`,
        name: `network ${name}, ${at} frequency: peak top voltage`,
        unit: "V",
        reference: exact.vtop_peak,
        compute: () => fixedBurst(name, f_drive).peakTopVoltage.value,
      },
      {
        ...common,
        id: `burst.fixed.${name}.${at}.time`,
        name: `network ${name}, ${at} frequency: time of the peak top voltage`,
        unit: "s",
        reference: exact.t_vtop_peak,
        compute: () => fixedBurst(name, f_drive).peakTopVoltage.time,
      },
    ];
  }),
);

function feedbackBurst(name: SetName): BurstResult {
  const { half_cycles } = burst.sets[name].zcs;
  const onTime = half_cycles["40"].t_end_exact * 1.0001;
  return simulateBurst(burstNetwork(name), burstDriveOf(name, { onStateResistance: 0, onTime }))!;
}

const feedback: ReferenceCheck[] = SETS.flatMap((name) => {
  const { peaks_exact, half_periods_exact } = burst.sets[name].zcs;
  const common = {
    group: "Burst with feedback from the current's zeros",
    source: "burst.json: exact propagation, ideal zero-crossing commutation",
    tolerance: 2e-3,
  };
  return [1, 5, 10, 20, 40].flatMap((half): ReferenceCheck[] => [
    {
      ...common,
      id: `burst.feedback.${name}.${half}.peak`,
      name: `network ${name}, half cycle ${half}: peak primary current`,
      unit: "A",
      reference: peaks_exact[half - 1],
      compute: () => feedbackBurst(name).halfCycles[half - 1].peakCurrent,
    },
    {
      ...common,
      id: `burst.feedback.${name}.${half}.duration`,
      name: `network ${name}, half cycle ${half}: duration`,
      unit: "s",
      reference: half_periods_exact[half - 1],
      compute: () => {
        const { from, to } = feedbackBurst(name).halfCycles[half - 1];
        return to - from;
      },
    },
  ]);
});

export const BURST_CHECKS: ReferenceCheck[] = [...response, ...lossless, ...fixed, ...feedback];
