import { LOSS_CHECKS } from "./checks/losses";
import { runChecks } from "./runChecks";

runChecks(LOSS_CHECKS);
