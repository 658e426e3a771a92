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
  expect(kept.map(({ kind }) => kind)).toEqual(["show", "design"]);
});

it("a design that came during the session has a version from before its first edit, and one alone", async () => {
  const bench = newBench();
  bench.actions.newDesign();
  const added = bench.show().open;
  bench.actions.setValue("primary.tap", 5);
  bench.actions.setValue("primary.tap", 5.5);
  await bench.settled();
  const kept = (await bench.actions.versions.list()).filter(({ designId }) => designId === added);
  expect(kept.map(({ cause }) => cause)).toEqual(["before the first edit of a session"]);
  const version = await bench.actions.versions.read(kept[0].id);
  expect(JSON.parse(version?.text ?? "").primary.tap).not.toBe(5);
});
