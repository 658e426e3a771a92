/** The coupled network of a design, and its response. */
import { coupledNetwork, sparkLoad } from "../../calc/circuit/coupledNetwork";
import type { Network } from "../../calc/circuit/network";
import { type ResponseResult, responseResult } from "../../calc/circuit/response";
import type { DesignParts } from "../../calc/design-parts";
import { areSolvable } from "../solvable";
import { type SolvedCoil, solveCoil } from "../solvedCoil";

/** The coupled network, with or without the spark load; null if a part of it has no solution. */
export function responseNetwork(
  design: DesignParts,
  loaded: boolean,
  { secondary, primary, coupling }: SolvedCoil = solveCoil(design),
): Network | null {
  if (!primary || !secondary || !coupling || !areSolvable(design, ["spark"])) return null;
  const load = loaded ? sparkLoad(design.spark) : null;
  return coupledNetwork(primary, secondary, coupling.mutuals, load);
}

/** Response with and without the spark; null if there is none. */
export function designResponse(design: DesignParts, coil: SolvedCoil): ResponseResult | null {
  const unloaded = responseNetwork(design, false, coil);
  const loaded = responseNetwork(design, true, coil);
  return unloaded && loaded && responseResult(unloaded, loaded);
}
