import { CAPACITANCE_CHECKS } from "./checks/capacitance";
import { runChecks } from "./runChecks";

runChecks(CAPACITANCE_CHECKS);
