import { PUBLISHED_CAPACITANCE_CHECKS } from "./checks/publishedCapacitance";
import { runChecks } from "./runChecks";

runChecks(PUBLISHED_CAPACITANCE_CHECKS);
