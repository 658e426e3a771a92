/** The register of all results, read by panels, help, sheet, line-up, headless commands and theory page. */

import { ARRANGEMENT_RESULTS, BANK_RESULTS, TANK_STRESS_RESULTS } from "../bank/bankRegister";
import { BURST_RESULTS } from "../burst/burstRegister";
import { COUPLING_RESULTS } from "../coupling/couplingRegister";
import { SENSE_RESULTS } from "../currentLimit/currentLimitRegister";
import { LOSS_RESULTS } from "../losses/lossesRegister";
import { PRIMARY_RESULTS } from "../primary/primaryRegister";
import { RESPONSE_CURVE_RESULTS, RESPONSE_RESULTS } from "../response/responseRegister";
import { CORRECTION_RESULTS } from "../secondary/correctionsRegister";
import { SECONDARY_RESULTS } from "../secondary/secondaryRegister";
import { SUPPLY_RESULTS } from "../supply/supplyRegister";
import { COMMUTATION_RESULTS, SWITCH_RESULTS } from "../switches/switchesRegister";
import { TOP_LOAD_RESULTS } from "../topLoad/topLoadRegister";
import { TUNING_RESULTS } from "../tuning/tuningRegister";
import type { ResultEntry } from "./entry";

export const RESULTS: readonly ResultEntry[] = [
  ...SECONDARY_RESULTS,
  ...TOP_LOAD_RESULTS,
  ...PRIMARY_RESULTS,
  ...COUPLING_RESULTS,
  ...BANK_RESULTS,
  ...TUNING_RESULTS,
  ...CORRECTION_RESULTS,
  ...LOSS_RESULTS,
  ...RESPONSE_RESULTS,
  ...RESPONSE_CURVE_RESULTS,
  ...BURST_RESULTS,
  ...TANK_STRESS_RESULTS,
  ...ARRANGEMENT_RESULTS,
  ...SUPPLY_RESULTS,
  ...SWITCH_RESULTS,
  ...COMMUTATION_RESULTS,
  ...SENSE_RESULTS,
];

const BY_ID = new Map(RESULTS.map((entry) => [entry.id, entry]));

/** Replaces indices by `*`: `secondary.overtones.0` becomes `secondary.overtones.*`. */
function withoutIndices(id: string): string {
  return id.replace(/\.\d+(?=\.|$)/g, ".*");
}

/** The entry of a result, with or without indices in its path; null if there is none. */
export function entryAt(id: string): ResultEntry | null {
  return BY_ID.get(withoutIndices(id)) ?? null;
}

/**
 * The entry of a result.
 * @param id dotted path in the evaluation, with or without indices
 * @throws if there is none: a name in the code is wrong
 */
export function resultEntry(id: string): ResultEntry {
  const entry = entryAt(id);
  if (!entry) throw new Error(`no result is registered as “${id}”`);
  return entry;
}

/** The value at a dotted path of an evaluation, null if the group or the number is absent. */
export function resultValue(evaluation: object, id: string): number | null {
  let value: unknown = evaluation;
  for (const key of id.split(".")) {
    if (value === null || typeof value !== "object") return null;
    value = (value as Record<string, unknown>)[key];
  }
  return typeof value === "number" && Number.isFinite(value) ? value : null;
}
