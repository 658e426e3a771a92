import { afterAll, beforeAll, describe, inject, it } from "vitest";
import { ALL_ROWS } from "../torture/allRows";
import { newLab } from "../torture/lab";

const SEED = 7;

describe("the torture, in short", () => {
  let lab: ReturnType<typeof newLab>;
  beforeAll(() => {
    const fault = inject("browserFault");
    if (fault) throw new Error(fault);
    lab = newLab(inject("address"));
  });
  afterAll(() => lab.close());

  it.for(ALL_ROWS.map((row) => [row.name, row] as const))(
    "loses nothing: %s",
    async ([, row], { expect }) => {
      const { tried, losses } = await row.run(row.short, SEED, lab);
      expect(losses).toEqual([]);
      expect(tried).toBeGreaterThan(0);
    },
  );
});
