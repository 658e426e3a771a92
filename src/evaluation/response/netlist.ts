/** A design's coupled circuit as a SPICE netlist, with notes on what it leaves out. */
import { burstNetlist } from "../../calc/burst/burstNetlist";
import { responseNetlist } from "../../calc/circuit/responseNetlist";
import type { Design } from "../../design/design";
import { designBursts } from "../burst/burstStage";
import { responseNetwork } from "./responseStage";

export interface Netlist {
  text: string;
  /** one sentence each, without a full stop */
  remarks: string[];
}

/** The response to a sine over both poles; null if the coupled network has no solution. */
export function responseNetlistOf(design: Design, loaded: boolean): Netlist | null {
  const network = responseNetwork(design, loaded);
  const text = network && responseNetlist(network, { loaded: network.load !== null, title: design.title });
  if (!network || !text) return null;
  const bare = loaded && network.load === null;
  return { text, remarks: bare ? ["the design has no spark load, so the netlist has none"] : [] };
}

/** Simulated time after the on-time, relative to it, while the current rings down through the diodes. */
const AFTER = 4 / 3;

/** s, for a burst without an on-time, because a simulator needs a duration. */
const LEAST_ON_TIME = 1e-9;
const LEAST_RUN = 1e-5;

const LIMIT_REMARKS = {
  "end burst":
    "the over-current limit is not in the netlist; the drive ends where it would have ended the burst",
  "end half cycle":
    "the over-current limit, which would end each half cycle that reaches it, is not in the netlist; the current grows larger there",
};

/** The design's burst with its spark; null if it cannot be computed. */
export function burstNetlistOf(design: Design): Netlist | null {
  const bursts = designBursts(design);
  if (!bursts) return null;
  const { case: simulated, result } = bursts.loaded;
  const { driveEnd, primaryEnd, limitReachedAt } = result;
  const drive = { ...simulated.drive, onTime: Math.max(driveEnd, LEAST_ON_TIME) };
  const until = Math.max(AFTER * driveEnd, primaryEnd, LEAST_RUN);
  const remarks = [
    limitReachedAt === null ? null : LIMIT_REMARKS[simulated.drive.overCurrentAction],
    simulated.options.growth
      ? "the spark does not grow in the netlist; its full load is connected from the start"
      : null,
  ];
  return {
    text: burstNetlist(simulated.network, drive, { title: design.title, until }),
    remarks: remarks.filter((remark) => remark !== null),
  };
}
