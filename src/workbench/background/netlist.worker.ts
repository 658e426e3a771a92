import { netlistJob } from "./netlistJob";
import { serve } from "./serve";

serve(netlistJob);
