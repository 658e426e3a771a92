import { designQuietLead } from "../../evaluation/quietLead";
import { serve } from "./serve";

serve(designQuietLead);
