import { handedOver, scoreJob } from "./scoreJob";
import { serve } from "./serve";

serve(scoreJob, handedOver);
