import { expect, it } from "vitest";
import { MemoryStorage, newBench } from "../fakes";

it("a session may begin with a design that is added, and keeps the show as it was before", async () => {
  const storage = new MemoryStorage();
  const first = newBench(storage);
  first.actions.setValue("primary.tap", 5);
  await first.settled();
  first.close();
  const second = newBench(storage);
  const before = second.show().order;
  second.actions.newDesign();
  expect(second.show().order).toHaveLength(before.length + 1);
  await second.settled();
  const kept = await second.actions.versions.list();
  expect(kept.map(({ kind }) => kind)).toEqual(["show"]);
});
