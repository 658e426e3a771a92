import { ELECTROSTATICS_CHECKS } from "./checks/coilElectrostatics";
import { HAT_FUNCTION_CHECKS } from "./checks/hatFunctions";
import { runChecks } from "./runChecks";

runChecks([...ELECTROSTATICS_CHECKS, ...HAT_FUNCTION_CHECKS]);
