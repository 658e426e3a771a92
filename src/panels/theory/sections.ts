import { RESULTS } from "../../evaluation/register/register";
import { COUPLED_CIRCUIT, LOSSES, TUNING } from "./circuits";
import { PARTS, SUPPLY } from "./drive";
import { ELECTRIC_FIELD, MODES } from "./fields";
import { COUPLING, MAGNETIC_FIELD } from "./magnetics";
import type { TheorySection } from "./section";

export const SECTIONS: readonly TheorySection[] = [
  ELECTRIC_FIELD,
  MODES,
  MAGNETIC_FIELD,
  COUPLING,
  LOSSES,
  COUPLED_CIRCUIT,
  TUNING,
  SUPPLY,
  PARTS,
];

const described = new Set(SECTIONS.flatMap((section) => section.models.flatMap((model) => model.results)));

/** Results that are described already, for another state of the coil. */
export const REPEATED_RESULTS = RESULTS.filter(({ id }) => id.startsWith("burst.unloaded."));

const repeated = new Set(REPEATED_RESULTS.map(({ id }) => id));

/** Results of no model above: geometry, definitions and proposals. */
export const OTHER_RESULTS = RESULTS.filter(({ id }) => !described.has(id) && !repeated.has(id));
