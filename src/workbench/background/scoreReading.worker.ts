import { scoreReadingJob } from "./scoreReadingJob";
import { serve } from "./serve";

serve(scoreReadingJob);
