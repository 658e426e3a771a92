import type { ResultEntry } from "../register/entry";
import { cite, plain, type Source } from "../register/source";

const WINDING_SOURCE = [
  cite("terman1943", "sec. 2", "exact skin effect"),
  cite("rayleigh1892", "", "field of the other turns, by coupled multipoles"),
];
const WINDING_VALIDITY =
  "Single layer of round wire; the former's and the coating's dielectric loss left out.";

interface Part {
  id: string;
  label: string;
  symbol: string;
  words: string;
  formula: string;
  inputs: readonly string[];
}

interface Circuit {
  name: "secondary" | "primary";
  source: readonly Source[];
  validity: string;
  accuracy: string;
}

/** The resistance of a part, and its share of the circuit. */
function partResults({ id, symbol, inputs, ...part }: Part, circuit: Circuit): ResultEntry[] {
  const { name, source, validity, accuracy } = circuit;
  const path = `losses.${name}.${id}`;
  return [
    {
      ...part,
      id: `${path}.resistance`,
      symbol,
      dimension: "resistance",
      inputs,
      source,
      validity,
      accuracy,
    },
    {
      id: `${path}.share`,
      label: `${part.label}, share of the ${name}'s loss`,
      symbol: `${symbol}/R`,
      dimension: "percent",
      words: `${part.words} As a share of the total resistance of the ${name}.`,
      formula: `${symbol}/R`,
      inputs: [`${path}.resistance`, `losses.${name}.total`],
      source: [plain("definition")],
      validity,
      accuracy,
    },
  ];
}

const SECONDARY: Circuit = {
  name: "secondary",
  source: WINDING_SOURCE,
  validity: WINDING_VALIDITY,
  accuracy: "5 % of the winding's loss; a real coil loses more (common practice, no source).",
};

const PRIMARY: Circuit = {
  name: "primary",
  source: [
    plain("ownModel", "surface current of the tube's field solution"),
    plain("dataSheet", "capacitors and switches"),
  ],
  validity: "At the primary's resonance, uncoupled; joints and leads left out.",
  accuracy: "10 % of the tube's part; data sheets for the others.",
};

const SECONDARY_PARTS: readonly Part[] = [
  {
    id: "directCurrent",
    label: "Wire, direct current",
    symbol: "R_dc′",
    words: "The wire's direct-current resistance weighted by the square of the current profile.",
    formula: "R = R_dc·⟨I²⟩/I_max²",
    inputs: ["secondary.dcResistance", "secondary.profile"],
  },
  {
    id: "skin",
    label: "Skin effect",
    symbol: "R_skin",
    words: "Resistance added by current crowding to the surface of the wire, each turn on its own.",
    formula: "R = R_dc′·(F(d/δ) − 1)",
    inputs: ["secondary.resonance", "secondary.wire.conductorDiameter", "secondary.windingTemperature"],
  },
  {
    id: "proximity",
    label: "Proximity",
    symbol: "R_prox",
    words: "Resistance added by eddy currents in the wire from the field of all other turns.",
    formula: "R = R_row + R_along + R_across − R_skin − R_dc′",
    inputs: ["secondary.profile", "secondary.pitch", "secondary.wire.conductorDiameter"],
  },
  {
    id: "allowance",
    label: "Allowance, secondary",
    symbol: "R_more",
    words: "The allowance entered for losses that are not modelled; zero unless set.",
    formula: "R = a·(R_dc′ + R_skin + R_prox)",
    inputs: ["corrections.lossAllowance"],
  },
];

const PRIMARY_PARTS: readonly Part[] = [
  {
    id: "tube",
    label: "Tube",
    symbol: "R_tube",
    words:
      "Resistance of the tube with the current distribution of the field solution, in a skin no thicker than the wall.",
    formula: "R = ρ/δ·∮ K² ds/I²",
    inputs: ["primary.resonance", "primary.wallThickness", "primary.tap"],
  },
  {
    id: "bank",
    label: "Capacitor bank",
    symbol: "R_bank",
    words: "The capacitors' dissipation factor as a resistance in series.",
    formula: "R = tan δ/(ω·C)",
    inputs: ["tank.unit.dissipationFactor", "tank.capacitance", "primary.resonance"],
  },
  {
    id: "switches",
    label: "Switches",
    symbol: "R_sw",
    words: "On-state resistance of the switches that conduct at the same time.",
    formula: "R = n·R_on/devices",
    inputs: ["drive.bridge", "drive.switch.onStateResistance", "drive.switch.parallelDevices"],
  },
  {
    id: "allowance",
    label: "Allowance, primary",
    symbol: "R_more",
    words: "The allowance entered for losses that are not modelled; zero unless set.",
    formula: "R = a·(R_tube + R_bank + R_sw)",
    inputs: ["corrections.lossAllowance"],
  },
];

function total({ name, ...circuit }: Circuit, parts: readonly Part[]): ResultEntry {
  return {
    ...circuit,
    id: `losses.${name}.total`,
    label: `Loss resistance of the ${name}`,
    symbol: "R",
    dimension: "resistance",
    words: `All losses of the ${name} together, as computed; a measured Q does not change them.`,
    formula: parts.map(({ symbol }) => symbol).join(" + "),
    inputs: parts.map(({ id }) => `losses.${name}.${id}.resistance`),
  };
}

export const LOSS_RESULTS: readonly ResultEntry[] = [
  total(SECONDARY, SECONDARY_PARTS),
  ...SECONDARY_PARTS.flatMap((part) => partResults(part, SECONDARY)),
  total(PRIMARY, PRIMARY_PARTS),
  ...PRIMARY_PARTS.flatMap((part) => partResults(part, PRIMARY)),
];
