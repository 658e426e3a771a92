import { describe, expect, it, vi } from "vitest";
import { withValueAt } from "../../src/design/changeAt";
import { pierHallLeft } from "../../src/design/examples";
import { stage } from "../../src/evaluation/stage";

describe("a stage", () => {
  const setUp = () => {
    const run = vi.fn((parts: { turns: number }, before: { value: number }) => ({
      sum: parts.turns + before.value,
    }));
    return { run, step: stage(({ secondary: { turns } }) => ({ turns }), run) };
  };
  const before = { value: 1 };

  it("runs once for the same parts by value, however the design was copied", () => {
    const { run, step } = setUp();
    const first = step(pierHallLeft, before);
    expect(step(structuredClone(pierHallLeft), before)).toBe(first);
    expect(step(withValueAt(pierHallLeft, "primary.tap", 5), before)).toBe(first);
    expect(run).toHaveBeenCalledTimes(1);
  });

  it("runs again where a part that it reads has changed, and remembers both", () => {
    const { run, step } = setUp();
    const other = withValueAt(pierHallLeft, "secondary.turns", 1000);
    const [first, second] = [step(pierHallLeft, before), step(other, before)];
    expect(second.sum).toBe(1001);
    expect([step(pierHallLeft, before), step(other, before)]).toEqual([first, second]);
    expect(run).toHaveBeenCalledTimes(2);
  });

  it("runs again where an earlier result is another object", () => {
    const { run, step } = setUp();
    step(pierHallLeft, before);
    step(pierHallLeft, { value: 1 });
    expect(run).toHaveBeenCalledTimes(2);
  });

  it("receives nothing but the parts that it selects", () => {
    const { run, step } = setUp();
    step(pierHallLeft, before);
    expect(run.mock.calls[0][0]).toEqual({ turns: pierHallLeft.secondary.turns });
  });
});
