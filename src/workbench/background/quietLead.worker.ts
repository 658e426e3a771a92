import { designQuietLead } from "../../evaluation/switches/quietLead";
import { serve } from "./serve";

serve(designQuietLead);
