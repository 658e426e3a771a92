/** The pair, computed in the background. */
import type { PairOutcome } from "../../evaluation/pair/pairResults";
import { session } from "../session/session";
import type { PairRequest } from "./pairJob";
import { newTask } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startPair } from "./workers";

export const pairTask = newTask<PairRequest, PairOutcome>({
  what: "the computation of the pair",
  startWorker: startPair,
  grace: 2000,
  report: reportTo(session.store),
  lastEdit: () => lastEditOf(session.store.getState()),
});
