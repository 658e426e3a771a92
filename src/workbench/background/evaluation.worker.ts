import { evaluationJob } from "./evaluationJob";
import { serve } from "./serve";

serve(evaluationJob);
