/** The load of the bursts, computed in the background. */
import { session } from "../session/session";
import type { CoilDesigns, CoilLoads } from "./coilLoadsJob";
import { newTask } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startCoilLoads } from "./workers";

export const loadsTask = newTask<CoilDesigns, CoilLoads>({
  what: "the computation of the load of the bursts",
  startWorker: startCoilLoads,
  grace: 5000,
  report: reportTo(session.store),
  lastEdit: () => lastEditOf(session.store.getState()),
});
