/** What bursts cost, as it is worked out beside the page. */
import { session } from "../session/session";
import type { CoilDesigns, CoilLoads } from "./coilLoadsJob";
import { newTask } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startCoilLoads } from "./workers";

export const loadsTask = newTask<CoilDesigns, CoilLoads>({
  what: "the reckoning of what bursts cost",
  startWorker: startCoilLoads,
  grace: 5000,
  report: reportTo(session.store),
  lastEdit: () => lastEditOf(session.store.getState()),
});
