/** Every property is tried with the same cases in every run; the torture tries others. */
import fc from "fast-check";
import { few, SEED } from "./properties";

fc.configureGlobal({ seed: SEED, numRuns: few(100) });
