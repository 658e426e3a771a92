import { energySweepJob } from "./energySweepJob";
import { serve } from "./serve";

serve(energySweepJob);
