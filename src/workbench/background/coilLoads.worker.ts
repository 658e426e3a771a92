import { coilLoadsJob } from "./coilLoadsJob";
import { serve } from "./serve";

serve(coilLoadsJob);
