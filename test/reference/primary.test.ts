import { PRIMARY_CHECKS } from "./checks/primary";
import { runChecks } from "./runChecks";

runChecks(PRIMARY_CHECKS);
