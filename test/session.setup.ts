import "./startWorkersInPlace";
import { beforeAll } from "vitest";
import { energySweeps, session } from "../src/workbench/session/session";
import type { WorkbenchState } from "../src/workbench/session/workbenchState";

declare global {
  var untouchedSession: WorkbenchState | undefined;
}

// files that share a process share the session: each begins with it as the first one found it
globalThis.untouchedSession ??= session.store.getState();
const untouched = globalThis.untouchedSession;

beforeAll(() => {
  session.store.setState(untouched, true);
  energySweeps.store.setState(energySweeps.store.getInitialState(), true);
  // some files of this project need no screen and have none
  if (typeof document === "undefined") return;
  localStorage.clear();
  document.body.replaceChildren();
});
