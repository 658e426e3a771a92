/** Netlist files, written in the background. */
import type { Netlist } from "../../evaluation/response/netlist";
import { session } from "../session/session";
import type { NetlistRequest } from "./netlistJob";
import { newTask, type Task } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startNetlist } from "./workers";

/** @param save offers the text to the user; not called for a design without a coupled circuit */
export function newNetlistFiles(
  save: (text: string, request: NetlistRequest) => void,
): Task<NetlistRequest, Netlist | null> {
  return newTask<NetlistRequest, Netlist | null>({
    what: "the export of the netlist",
    startWorker: startNetlist,
    grace: 0,
    report: reportTo(session.store),
    lastEdit: () => lastEditOf(session.store.getState()),
    listener: {
      result: (netlist, request) => {
        if (netlist) save(netlist.text, request);
      },
    },
  });
}
