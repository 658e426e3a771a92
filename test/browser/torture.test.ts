import { afterAll, beforeAll, describe, inject, it } from "vitest";
import { ALL_ROWS } from "../torture/allRows";
import { newLab, PHONE } from "../torture/lab";

const SEED = 7;

describe.concurrent("the torture, in short", () => {
  let lab: ReturnType<typeof newLab>;
  beforeAll(() => {
    const fault = inject("browserFault");
    if (fault) throw new Error(fault);
    lab = newLab(inject("address"), PHONE);
  });
  afterAll(() => lab.close());

  it.for(ALL_ROWS.filter(({ short }) => short > 0).map((row) => [row.name, row] as const))(
    "loses nothing: %s",
    async ([, row], { expect }) => {
      const { tried, losses } = await row.run(row.short, SEED, lab);
      expect(losses).toEqual([]);
      expect(tried).toBeGreaterThan(0);
    },
  );
});
