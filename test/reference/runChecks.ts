import { describe, expect, it } from "vitest";
import type { ReferenceCheck } from "./check";

/** Runs a list of checks as tests, each with its source in its name. */
export function runChecks(checks: readonly ReferenceCheck[]): void {
  for (const group of new Set(checks.map((check) => check.group))) {
    describe(group, () => {
      it.each(checks.filter((check) => check.group === group))(
        "$name ($source)",
        ({ reference, tolerance, absolute, compute }) => {
          const value = compute();
          const deviation = absolute ? value - reference : value / reference - 1;
          expect(Math.abs(deviation), `${value} against ${reference}`).toBeLessThanOrEqual(tolerance);
        },
      );
    });
  }
}
