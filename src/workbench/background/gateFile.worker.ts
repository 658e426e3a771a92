import { gateFileJob } from "./gateFileJob";
import { serve } from "./serve";

serve(gateFileJob);
