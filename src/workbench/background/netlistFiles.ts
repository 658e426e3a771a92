/** Netlist files, written in the background. */
import type { Netlist } from "../../evaluation/response/netlist";
import { session } from "../session/session";
import type { NetlistRequest } from "./netlistJob";
import { newTask, type Task } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startNetlist } from "./workers";

/** @param save receives null for a design without a coupled circuit */
export function newNetlistFiles(
  save: (netlist: Netlist | null, request: NetlistRequest) => void,
): Task<NetlistRequest, Netlist | null> {
  return newTask<NetlistRequest, Netlist | null>({
    what: "the export of the netlist",
    startWorker: startNetlist,
    // one that was asked for is written, whatever is asked for next
    grace: 5000,
    report: reportTo(session.store),
    lastEdit: () => lastEditOf(session.store.getState()),
    listener: { result: save },
  });
}
