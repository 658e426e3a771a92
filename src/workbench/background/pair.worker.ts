import { pairJob } from "./pairJob";
import { serve } from "./serve";

serve(pairJob);
