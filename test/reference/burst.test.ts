import { BURST_CHECKS } from "./checks/burst";
import { runChecks } from "./runChecks";

runChecks(BURST_CHECKS);
