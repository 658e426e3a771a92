import { ELECTROSTATICS_CHECKS } from "./checks/coilElectrostatics";
import { runChecks } from "./runChecks";

runChecks(ELECTROSTATICS_CHECKS);
