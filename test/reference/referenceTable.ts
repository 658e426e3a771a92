import type { ReferenceRow } from "../../src/panels/theory/referenceRow";
import type { ReferenceCheck } from "./check";
import { ALL_CHECKS } from "./checks/allChecks";

function rowOf({ compute, absolute = false, ...check }: ReferenceCheck): ReferenceRow {
  const computed = compute();
  const deviation = absolute ? computed - check.reference : computed / check.reference - 1;
  return { ...check, absolute, computed, deviation };
}

/** The rows of the theory page, computed by the code that the tests run. Takes seconds. */
export function referenceTable(): ReferenceRow[] {
  return ALL_CHECKS.map(rowOf);
}
