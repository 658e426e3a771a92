import { MODE_CHECKS } from "./checks/secondaryModes";
import { runChecks } from "./runChecks";

runChecks(MODE_CHECKS);
