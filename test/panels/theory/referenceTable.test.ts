import { REFERENCE_TABLE } from "virtual:reference-table";
import { describe, expect, it } from "vitest";
import { ALL_CHECKS } from "../../reference/checks/allChecks";

const modules = import.meta.glob<Record<string, unknown>>("../../reference/checks/*.ts", { eager: true });

/** Every list that a file of checks gives, whether or not somebody thought of adding it to the whole. */
const lists = Object.entries(modules)
  .filter(([path]) => !path.endsWith("/allChecks.ts"))
  .flatMap(([, module]) => Object.entries(module).filter(([name]) => name.endsWith("_CHECKS")));

describe("the table of references", () => {
  it("holds every check of every list", () => {
    const checked = lists.flatMap(([, checks]) => (checks as { id: string }[]).map(({ id }) => id));
    expect(lists.length).toBeGreaterThan(8);
    expect(REFERENCE_TABLE.map(({ id }) => id).sort()).toEqual(checked.sort());
  });

  it("says what the tests say", () => {
    const said = REFERENCE_TABLE.map(({ computed, deviation, ...row }) => row);
    expect(said).toEqual(
      ALL_CHECKS.map(({ compute, absolute = false, ...check }) => ({ ...check, absolute })),
    );
  });

  it("knows each row by a name of its own", () => {
    expect(new Set(REFERENCE_TABLE.map(({ id }) => id)).size).toBe(REFERENCE_TABLE.length);
  });

  it("deviates nowhere by more than the tolerance", () => {
    const beyond = REFERENCE_TABLE.filter(({ deviation, tolerance }) => !(Math.abs(deviation) <= tolerance));
    expect(beyond).toEqual([]);
  });
});
