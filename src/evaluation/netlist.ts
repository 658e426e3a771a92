/** A design's coupled circuit as a SPICE netlist, with a word on what of the design is not in it. */
import { burstNetlist } from "../calc/circuit/burstNetlist";
import { responseNetlist } from "../calc/circuit/responseNetlist";
import type { Design } from "../design/design";
import { designBursts, responseNetwork } from "./evaluate";

export interface Netlist {
  text: string;
  /** one sentence each, without a full stop */
  remarks: string[];
}

/** The response to a sine over both poles; null while the coupled network has no solution. */
export function responseNetlistOf(design: Design, loaded: boolean): Netlist | null {
  const network = responseNetwork(design, loaded);
  const text = network && responseNetlist(network, { loaded: network.load !== null, title: design.title });
  if (!network || !text) return null;
  const bare = loaded && network.load === null;
  return { text, remarks: bare ? ["the design has no spark load; the netlist is without one"] : [] };
}

/** s simulated after the on-time, as a part of it: the current rings down through the diodes. */
const AFTER = 4 / 3;

/** The design's burst with its spark; null while it cannot be computed. */
export function burstNetlistOf(design: Design): Netlist | null {
  const bursts = designBursts(design);
  if (!bursts) return null;
  const { case: simulated, result } = bursts.loaded;
  const { driveEnd, primaryEnd, limitReachedAt } = result;
  const drive = { ...simulated.drive, onTime: driveEnd };
  const until = Math.max(AFTER * driveEnd, primaryEnd);
  const remarks = [
    limitReachedAt === null
      ? null
      : "the over-current limit is not in the netlist; the drive ends where it would have ended the burst",
    simulated.options.growth
      ? "the spark does not grow in the netlist; its full load stands from the start"
      : null,
  ];
  return {
    text: burstNetlist(simulated.network, drive, { title: design.title, until }),
    remarks: remarks.filter((remark) => remark !== null),
  };
}
