import { MAGNETIC_LOOP_CHECKS } from "./checks/magneticLoops";
import { runChecks } from "./runChecks";

runChecks(MAGNETIC_LOOP_CHECKS);
