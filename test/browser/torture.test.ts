import { describe, expect, inject, it, onTestFinished } from "vitest";
import { ALL_ROWS } from "../torture/allRows";
import { newLab } from "../torture/lab";

const SEED = 7;

describe("the torture, in short", () => {
  it.each(ALL_ROWS.map((row) => [row.name, row] as const))("loses nothing: %s", async (_, row) => {
    const fault = inject("browserFault");
    if (fault) throw new Error(fault);
    const lab = newLab(inject("address"));
    onTestFinished(() => lab.close());
    const { tried, losses } = await row.run(row.short, SEED, lab);
    expect(losses).toEqual([]);
    expect(tried).toBeGreaterThan(0);
  });
});
