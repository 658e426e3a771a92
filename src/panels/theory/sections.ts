import { RESULTS } from "../../evaluation/register/register";
import { COUPLED_CIRCUIT, LOSSES, TUNING } from "./circuits";
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
];

const told = new Set(SECTIONS.flatMap((section) => section.models.flatMap((model) => model.results)));

/** Results that no model above claims: geometry, definitions and what repeats another result. */
export const OTHER_RESULTS = RESULTS.filter(({ id }) => !told.has(id));
