import { scoreJob, transferables } from "./scoreJob";
import { serve } from "./serve";

serve(scoreJob, transferables);
