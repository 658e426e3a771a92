/** The job of the worker that writes netlists. */
import type { Design } from "../../design/design";
import { burstNetlistOf, type Netlist, responseNetlistOf } from "../../evaluation/response/netlist";

export interface NetlistRequest {
  kind: "response" | "burst";
  design: Design;
}

/** The coupled circuit with its spark, for a circuit simulator; null if the design has none. */
export function netlistJob({ kind, design }: NetlistRequest): Netlist | null {
  return kind === "burst" ? burstNetlistOf(design) : responseNetlistOf(design, true);
}
